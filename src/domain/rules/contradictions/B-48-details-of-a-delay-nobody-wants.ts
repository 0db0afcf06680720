import { text } from '../../codes/sections.ts';
import { all, any, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B48 = defineRule({
  id: 'B-48',
  title: 'Details of a delay that was not requested',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A 30-second delay or a door without its sign only makes sense with delayed egress.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishDelayedEgress',
      severity: 'warn',
      when: all(no('wishDelayedEgress'), any(yes('wishDelay30s'), yes('wishNoDelaySign'))),
      says: 'Delayed egress is not wanted, yet a 30-second delay or a door without its sign was entered; ask the owner which is right.',
    },
  ],
});
