import { text, under } from '../../codes/sections.ts';
import { all, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B30 = defineRule({
  id: 'B-30',
  title: 'A stair door to be locked, stories served not counted',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('stairDoors')],
  confidence: 'project',
  why: 'How far a person locked in the stair must travel decides whether and how it may be locked.',
  clauses: [
    {
      effect: 'finding',
      field: 'stairStories',
      severity: 'warn',
      when: all(yes('stairSideToLock'), not(isKnown('stairStories'))),
      says: 'The stair side is to be locked and the stories the stair serves were not counted; count them.',
    },
  ],
});
