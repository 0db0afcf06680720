import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B74 = defineRule({
  id: 'B-74',
  title: 'An automatic sliding door without an operator',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('powerDoors')],
  confidence: 'project',
  why: 'Without its operator it is a manual sliding door, which few means of egress may have.',
  clauses: [
    {
      effect: 'finding',
      field: 'operator',
      severity: 'refuse',
      when: all(is('doorType', 'slidingAutomatic'), is('operator', 'none')),
      says: 'The door is entered as automatic sliding, and without an operator; check which it is, because egress depends on it.',
    },
  ],
});
