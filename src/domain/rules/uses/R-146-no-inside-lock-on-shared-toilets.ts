import { under } from '../../codes/sections.ts';
import { all, ibc, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const shared = all(ibc(), is('roomUse', 'multiToilet'));

export const R146 = defineRule({
  id: 'R-146',
  title: 'A multi-user restroom is not locked from inside',
  family: 'uses',
  book: 'ibc',
  cites: [under('toiletRooms')],
  confidence: 'read',
  note: 'Read in the 2015 text; the clause is unchanged since 2012 as far as known.',
  why: 'One person must not be able to lock others in or out of a shared room.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: shared,
      of: { release: ['keyInside'] },
      says: 'The door of a shared restroom may not have a lock operated from inside.',
    },
    {
      key: 'b',
      effect: 'require',
      when: shared,
      items: ['noInsideLock'],
      says: 'Use only a latch with no thumbturn, button or bolt on the inside.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'locksmith',
      when: all(shared, is('latch', 'mortiseDeadbolt', 'boredPlusDeadbolt', 'deadboltOnly')),
      says: 'The bolt on this door can be thrown from inside; remove it or blank its thumbturn.',
    },
    {
      key: 'd',
      effect: 'finding',
      field: 'lockFunction',
      severity: 'warn',
      when: all(shared, is('lockFunction', 'office')),
      says: 'An office-function lock can be set from inside, and a shared restroom may not have that; change the function or check what the room is.',
    },
  ],
});
