import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B66 = defineRule({
  id: 'B-66',
  title: 'Occupant load against the swing of the leaf',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('doorSwing')],
  confidence: 'secondary',
  why: 'Fifty people pushing cannot pull a leaf toward themselves; in high hazard no one should have to.',
  clauses: [
    {
      effect: 'finding',
      field: 'swingsWithEgress',
      severity: 'refuse',
      when: all(
        yes('isEgress'),
        is('doorType', 'single', 'pair', 'balanced', 'gateSwing'),
        no('swingsWithEgress'),
        any(atLeast('occupantLoad', 'swingWithEgressLoad'), yes('groupH')),
      ),
      says: 'The leaf swings against people who leave, and at this load or hazard it must swing with them; check the swing and the load, or reverse the swing.',
    },
  ],
});
