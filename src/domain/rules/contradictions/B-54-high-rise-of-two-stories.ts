import { text, under } from '../../codes/sections.ts';
import { all, atMost, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B54 = defineRule({
  id: 'B-54',
  title: 'A high-rise of one or two stories',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('highRise')],
  confidence: 'project',
  why: 'A high-rise has an occupied floor more than 75 ft above the fire trucks.',
  clauses: [
    {
      effect: 'finding',
      field: 'storiesAboveGrade',
      severity: 'warn',
      when: all(yes('highRise'), atMost('storiesAboveGrade', 2)),
      says: 'The building is entered as a high-rise with {storiesAboveGrade}; check both.',
    },
  ],
});
