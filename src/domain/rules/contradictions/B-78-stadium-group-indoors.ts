import { text } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B78 = defineRule({
  id: 'B-78',
  title: 'An outdoor assembly group indoors',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Group A-5 means outdoor stands.',
  clauses: [
    {
      effect: 'finding',
      field: 'occupancyGroup',
      severity: 'warn',
      when: all(
        is('occupancyGroup', 'A-5'),
        no('exterior'),
        is('roomUse', 'conference', 'classroom', 'courtroom', 'office', 'corridor'),
      ),
      says: 'Group A-5 is for outdoor stands, and this is an indoor room, {roomUse}; check the group.',
    },
  ],
});
