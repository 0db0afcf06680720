import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B57 = defineRule({
  id: 'B-57',
  title: 'A fire command center in a building that is not a high-rise',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('highRise')],
  confidence: 'project',
  note: 'Some large low-rise buildings have one too, so this is only a question.',
  why: 'Fire command centers belong to high-rises, and stair doors are released from there.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireCommandCenter',
      severity: 'warn',
      when: all(yes('fireCommandCenter'), no('highRise')),
      says: 'A fire command center is entered and the building is not a high-rise; check both.',
    },
  ],
});
