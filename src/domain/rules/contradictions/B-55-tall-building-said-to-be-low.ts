import { text, under } from '../../codes/sections.ts';
import { all, atLeast, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B55 = defineRule({
  id: 'B-55',
  title: 'Twelve stories or more, entered as not a high-rise',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('highRise')],
  confidence: 'project',
  note: 'Twelve stories of 8 ft already put the top floor above 75 ft.',
  why: 'High-rise stairs have requirements of their own, and leaving them out would strand people.',
  clauses: [
    {
      effect: 'finding',
      field: 'highRise',
      severity: 'refuse',
      when: all(no('highRise'), atLeast('storiesAboveGrade', 12)),
      says: 'The building has {storiesAboveGrade} and is entered as not a high-rise; its top floor must be above 75 ft, so check both.',
    },
  ],
});
