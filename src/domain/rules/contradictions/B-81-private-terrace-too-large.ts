import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B81 = defineRule({
  id: 'B-81',
  title: 'A private office terrace that is too large to be one',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('locksAndLatches')],
  confidence: 'project',
  why: 'Only terraces of 250 ft² or less count as those of one private office.',
  clauses: [
    {
      effect: 'finding',
      field: 'roomUse',
      severity: 'warn',
      when: all(is('roomUse', 'officeTerrace'), over('roomAreaFt2', 'officeTerraceFt2')),
      says: 'The terrace is entered as that of a private office and has {roomAreaFt2}, above 250; enter it as an exterior space, or measure again.',
    },
  ],
});
