import { describe, expect, it } from 'vitest';
import { readOccupancyType, readRoomWords } from './roomWords.ts';

const told = (words: string) => {
  const read = readRoomWords(words);
  return read.is === 'use' ? read.use : read.is;
};

describe('the words for a room', () => {
  it.each([
    ['OFFICE', 'business'],
    ['Lab Office 3', 'business'],
    ['Office storage', 'accessoryStorage'],
    ['CONF. ROOM', 'assemblyTables'],
    ['Class Room 2', 'classroom'],
    ['ELEC. CL.', 'accessoryStorage'],
    ['CENTRAL MECH. RM.', 'accessoryStorage'],
    ['Pool deck', 'poolDeck'],
    ['Swimming pool', 'pool'],
    ['MEN’S LOCKER ROOM', 'lockerRoom'],
    ['CORRIDOR', 'passed'],
    ['ELEVATOR LOBBY', 'passed'],
    ['Lobby', 'open'],
    ['LAB', 'open'],
    ['CENTRAL WAITING', 'open'],
    ['Flammable storage', 'open'],
    ['Library', 'open'],
    // Two uses in one name, and the two that count alike.
    ['Library / Conference', 'open'],
    ['Office / Copy', 'business'],
    ['M. STAFF Locker/TOILET', 'open'],
    ['Buero', 'unknown'],
    ['X-RAY', 'unknown'],
    ['Clearing', 'unknown'],
    ['', 'unknown'],
    // A class with its number; a number alone says nothing, as editions number differently.
    ['13-15 11 34 11: Office', 'business'],
    ['SL_20_15_59 : Offices', 'business'],
    ['13-15 11 34 11', 'unknown'],
  ])('%s is %s', (words, means) => {
    expect(told(words)).toBe(means);
  });

  it('carries the doubt that goes with a use', () => {
    expect(readRoomWords('Auditorium')).toMatchObject({
      doubt: expect.stringMatching(/IBC 1004\.6/) as string,
    });
    expect(readRoomWords('Office')).toMatchObject({ doubt: '' });
  });
});

describe('an occupancy type', () => {
  it('names a use only where the whole group counts by one line', () => {
    expect(readOccupancyType('Group B')).toMatchObject({ is: 'use', use: 'business' });
    expect(readOccupancyType('F-1')).toMatchObject({ is: 'use', use: 'industrial' });
    expect(readOccupancyType('A-3')).toMatchObject({ is: 'open' });
    expect(readOccupancyType('Day care')).toMatchObject({ is: 'use', use: 'dayCare' });
  });
});
