import { under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R91 = defineRule({
  id: 'R-91',
  title: 'Memory care: the group decides',
  family: 'special',
  book: 'ibc',
  cites: [under('controlledEgress'), under('clinicalLocks')],
  confidence: 'secondary',
  why: 'The same unit may or may not keep its residents in, depending on the group it was approved under.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: all(is('roomUse', 'memoryCare'), not(is('occupancyGroup', 'I-2'))),
      says: 'A reviewer confirms the occupancy group of this memory-care unit first, because the group decides whether residents may be kept in.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('roomUse', 'memoryCare'), is('occupancyGroup', 'I-1.1')),
      says: 'In I-1, Condition 1, controlled egress is possible; a clinical lock without release is not.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(is('roomUse', 'memoryCare'), not(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2'))),
      says: 'Outside I-1 and I-2 neither controlled egress nor a clinical lock is open under the IBC; delayed egress is what remains. Under NFPA 101 read the board-and-care chapter.',
    },
  ],
});
