import { text, under } from '../../codes/sections.ts';
import { all, atMost, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B31 = defineRule({
  id: 'B-31',
  title: 'A stair that serves one story',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('stairDoors')],
  confidence: 'project',
  why: 'A stair connects at least two stories.',
  clauses: [
    {
      effect: 'finding',
      field: 'stairStories',
      severity: 'warn',
      when: all(yes('isStairDoor'), atMost('stairStories', 1)),
      says: 'This is entered as a stair door, and the stair serves one story; check the count and whether it is a stair.',
    },
  ],
});
