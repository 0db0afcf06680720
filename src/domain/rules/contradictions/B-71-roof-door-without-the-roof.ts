import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B71 = defineRule({
  id: 'B-71',
  title: 'A roof door, the use of the roof not asked',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('locksAndLatches')],
  confidence: 'project',
  why: 'An empty roof may be locked off, an occupied one is a room in the open.',
  clauses: [
    {
      effect: 'finding',
      field: 'roofUse',
      severity: 'warn',
      when: all(is('egressRole', 'roofDoor'), not(isKnown('roofUse'))),
      says: 'This is a roof door, and the use of the roof was not recorded; ask.',
    },
  ],
});
