import { text, under } from '../../codes/sections.ts';
import { all, atMost, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B16 = defineRule({
  id: 'B-16',
  title: 'A wall that is always rated, entered with no rating',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('openingProtectives')],
  confidence: 'project',
  why: 'Fire barriers, fire walls, exit stairs and horizontal exits exist only with a rating.',
  clauses: [
    {
      effect: 'finding',
      field: 'wallRatingMin',
      severity: 'refuse',
      when: all(
        is('wallKind', 'fireBarrier', 'fireWall', 'exitEnclosure', 'horizontalExit'),
        atMost('wallRatingMin', 0),
      ),
      says: 'This kind of wall always has a rating, and 0 is entered; ask for the plan or correct the kind of wall.',
    },
  ],
});
