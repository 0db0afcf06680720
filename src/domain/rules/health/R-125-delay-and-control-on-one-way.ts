import { under } from '../../codes/sections.ts';
import { atLeast } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { ofCare } from '../special/conditions.ts';

export const R125 = defineRule({
  id: 'R-125',
  title: 'A delayed and a controlled door in one egress path',
  family: 'health',
  book: 'ibc',
  cites: [under('delayedEgress'), under('controlledEgress')],
  confidence: 'secondary',
  why: 'Each section counts only its own kind of door, and no text says what two kinds in a row add up to.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: ofCare('controlledDoorsOnPath', atLeast('controlledDoorsOnPath', 1)),
      of: { release: ['delayed'] },
      says: 'There is a controlled door in the same egress path; a reviewer decides whether a delay may be added to it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: atLeast('delayedDoorsOnPath', 1),
      of: { release: ['controlled', 'clinical'] },
      says: 'There is a delayed door in the same egress path; a reviewer decides whether a staff-released lock may be added to it.',
    },
  ],
});
