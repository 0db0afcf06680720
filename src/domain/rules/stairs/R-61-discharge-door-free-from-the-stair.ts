import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const held = ['sensor', 'doorSwitch', 'delayed', 'controlled', 'clinical', 'attended'] as const;

export const R61 = defineRule({
  id: 'R-61',
  title: 'The discharge door is free from the stair',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors')],
  confidence: 'read',
  note: 'That a discharge door is locked only from the side opposite to egress was read; that no release arrangement of another section lifts this is our reading, the safe side. NFPA 101 alone: a reviewer decides.',
  why: 'Everyone in the stair ends up at this door; only its outside may be locked.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('egressRole', 'stairDischarge'),
      of: { release: ['free'] },
      says: 'The outside may be fail secure or locked by key, and nothing here has to unlock on fire alarm.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('egressRole', 'stairDischarge'),
      of: { release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut', 'keyInside', 'lobby'] },
      says: 'It locks the stair discharge, where the lever or bar must always open the door.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'stairDischarge'),
      of: { release: held },
      says: 'It holds the last door of a stair until something releases it: a reviewer decides whether that is acceptable here.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(any(ibc(), not(nfpa101())), is('egressRole', 'stairDischarge')),
      of: { release: held.filter((release) => release !== 'attended') },
      says: 'The last door of a stair may be locked only from outside; from the stair its lever or bar opens it at once, and no delay or release stands in for that.',
    },
  ],
});
