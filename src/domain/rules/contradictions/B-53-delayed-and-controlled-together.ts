import { text, under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B53 = defineRule({
  id: 'B-53',
  title: 'Delayed and controlled egress on one door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress'), under('controlledEgress')],
  confidence: 'project',
  why: 'Each arrangement must be met in full; half of one and half of another is neither.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishControlledEgress',
      severity: 'refuse',
      when: all(yes('wishDelayedEgress'), yes('wishControlledEgress')),
      says: 'Delayed and controlled egress are both wanted on this door; choose one.',
    },
  ],
});
