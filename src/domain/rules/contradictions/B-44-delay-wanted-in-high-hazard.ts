import { text, under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B44 = defineRule({
  id: 'B-44',
  title: 'Delayed egress wanted in high hazard',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress')],
  confidence: 'project',
  why: 'In a space with explosives or toxic goods fifteen seconds are too long.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishDelayedEgress',
      severity: 'warn',
      when: all(yes('wishDelayedEgress'), yes('groupH')),
      says: 'Delayed egress is wanted in {occupancyGroup}, where nobody may be delayed; check the group or withdraw the request.',
    },
  ],
});
