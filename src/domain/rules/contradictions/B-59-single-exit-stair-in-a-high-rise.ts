import { text, under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B59 = defineRule({
  id: 'B-59',
  title: 'The only exit stair of a high-rise',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('exitsRequired')],
  confidence: 'project',
  why: 'Only low buildings may have a single exit stair, and the relief for its doors would strand people in a tall one.',
  clauses: [
    {
      effect: 'finding',
      field: 'singleExitStair',
      severity: 'refuse',
      when: all(yes('singleExitStair'), yes('highRise')),
      says: 'This stair is entered as the only exit and the building as a high-rise; check both.',
    },
  ],
});
