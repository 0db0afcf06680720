import { expect, test } from 'vitest';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import { doubtsAt, doubtsOf } from './doubts.ts';

const sound = {
  ...newProject('p', 'P'),
  floors: { f: { id: 'f', name: 'Ground', level: 0 } },
  spaces: { s: { ...newSpace('s', 'Hall'), floorId: 'f' } },
  openings: { a: { ...newOpening('a', '101'), floorId: 'f', toSpaceId: 's' }, b: newOpening('b', '102') },
};
const byHand = { candidate: 'tractor/beam/free', reason: 'r', by: 'K. Lee', at: '2026-01-01T00:00:00.000Z' };

test('a sound project has none', () => {
  expect(doubtsOf(sound)).toEqual([]);
});

test.each([
  ['a mark twice', { b: newOpening('b', '101') }, 'Mark 101 stands at 2 openings'],
  ['a floor that is not there', { b: { ...newOpening('b', '102'), floorId: 'x' } }, 'Its floor is not'],
  ['a space that is not there', { b: { ...newOpening('b', '102'), toSpaceId: 'constructor' } }, 'leads into'],
  [
    'the side it is entered from',
    { b: { ...newOpening('b', '102'), fromSpaceId: 'x' } },
    'it is entered from',
  ],
  ['a choice nobody knows', { b: { ...newOpening('b', '102'), override: byHand } }, 'K. Lee chose “tractor'],
])('%s is said at its opening', (_name, openings, says) => {
  const doubts = doubtsOf({ ...sound, openings: { ...sound.openings, ...openings } });
  expect(doubtsAt(doubts, 'b').join()).toContain(says);
});

test('a space without a floor is sound, one on a floor that is not there is named at every opening', () => {
  const on = (floorId: string | null) =>
    doubtsOf({ ...sound, spaces: { s: { ...newSpace('s', 'Hall'), floorId } } });
  expect(on(null)).toEqual([]);
  expect(on('x')).toEqual([
    { openingId: null, says: 'Space Hall lies on a floor that is not in the project.' },
  ]);
});

test('what concerns the building is said at every opening, what concerns one only there', () => {
  const floors = { ...sound.floors, g: { id: 'g', name: 'Lobby level', level: 0 } };
  const setAside = [
    { where: 'Amendment 1', says: 'It is empty.', raw: {} },
    { where: 'Opening 101, latch', says: 'It is missing.', raw: null, openingId: 'a' },
  ];
  const doubts = doubtsOf({ ...sound, floors, setAside });
  expect(doubtsAt(doubts, 'a')).toEqual([
    'Amendment 1: It is empty.',
    'Opening 101, latch: It is missing.',
    'Floors Ground and Lobby level have the same level in the building.',
  ]);
  expect(doubtsAt(doubts, 'b')).toHaveLength(2);
});
