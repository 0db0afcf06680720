import { under } from '../../codes/sections.ts';
import { all, any, atMost, ibc, is, no, not, over, yes } from '../../logic/condition.ts';
import { exteriorSpace } from '../foundations/keyLocks.ts';
import { defineRule } from '../rule.ts';

export const R106 = defineRule({
  id: 'R-106',
  title: 'Key lock on the main door of a small assembly',
  family: 'rooms',
  book: 'ibc',
  cites: [under('locksAndLatches')],
  confidence: 'read',
  why: 'Someone unlocks the main door before people arrive, so this one door may be key locked.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(ibc(), yes('groupA'), yes('mainDoor'), atMost('occupantLoad', 'keyLockAssemblyLoadIbc')),
      of: { release: ['keyInside'] },
      says: 'Up to 300 people the main door may have a key-operated lock that is readily seen as locked and carries its sign; only this door, and the authority may revoke it.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(
        ibc(),
        yes('groupA'),
        no('mainDoor'),
        not(any(exteriorSpace, is('roomUse', 'unitBalcony', 'officeTerrace'))),
      ),
      of: { release: ['keyInside'] },
      says: 'The key lock allowed in an assembly space is for its main door only, and this is another door.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(
        ibc(),
        yes('groupA'),
        yes('mainDoor'),
        over('occupantLoad', 'keyLockAssemblyLoadIbc'),
        yes('placeOfWorship'),
      ),
      of: { release: ['keyInside'] },
      says: 'A place of worship may lock its main door by key whatever its load, on the same terms.',
    },
  ],
});
