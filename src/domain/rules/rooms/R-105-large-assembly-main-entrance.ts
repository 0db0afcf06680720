import { under } from '../../codes/sections.ts';
import { all, ibc, not, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const largeMain = all(ibc(), yes('groupA'), yes('mainDoor'), over('occupantLoad', 'keyLockAssemblyLoadIbc'));

export const R105 = defineRule({
  id: 'R-105',
  title: 'Main entrance of a large assembly',
  family: 'rooms',
  book: 'ibc',
  cites: [under('locksAndLatches'), under('assemblyMainExit')],
  confidence: 'read',
  note: 'Places of worship may have the key lock at any load. The figure of NFPA 101 is in R-154.',
  why: 'Most of a crowd heads for the door it came in by.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(largeMain, not(yes('placeOfWorship'))),
      of: { release: ['keyInside'] },
      says: 'More than 300 people use this main entrance, so it may not have a lock that needs a key from inside.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: largeMain,
      of: { wired: true },
      says: 'A reviewer signs for any electric lock on the main entrance of an assembly for {occupantLoad}.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: largeMain,
      says: 'The main exit must be wide enough for half of the load.',
    },
  ],
});
