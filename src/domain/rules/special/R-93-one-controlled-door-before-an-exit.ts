import { under } from '../../codes/sections.ts';
import { all, atLeast, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { controlledExcuse, nfpaAlone } from './conditions.ts';

export const R93 = defineRule({
  id: 'R-93',
  title: 'One controlled door before an exit',
  family: 'special',
  book: 'ibc',
  cites: [under('controlledEgress')],
  confidence: 'secondary',
  note: 'Read in a state variant. NFPA 101 counts locks on a door, not doors on a way; there a reviewer decides.',
  why: 'Staff cannot be at two locked doors at once.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(
        not(nfpaAlone),
        atLeast('controlledDoorsOnPath', 'controlledDoorsPerPathIbc'),
        not(controlledExcuse),
      ),
      of: { release: ['controlled'] },
      says: 'There is another controlled door in the same path before an exit, and only one is allowed.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: atLeast('controlledDoorsOnPath', 1),
      of: { release: ['controlled'] },
      says: 'There is more than one controlled door in this egress path; a reviewer confirms which exception or which code allows it.',
    },
  ],
});
