import { text, under } from '../../codes/sections.ts';
import { all, is, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B62 = defineRule({
  id: 'B-62',
  title: 'A leaf too low for egress',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('doorWidth')],
  confidence: 'project',
  why: 'Egress headroom is 80 in, and nothing may project below 78.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafHeightIn',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        is('doorType', 'single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced'),
        below('leafHeightIn', 78),
      ),
      says: 'The leaf is {leafHeightIn} high, too low for egress; measure again, or check whether people leave by this door.',
    },
  ],
});
