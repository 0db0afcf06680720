import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R171 = defineRule({
  id: 'R-171',
  title: 'A double-acting leaf carries no push bar',
  family: 'panic',
  book: 'practice',
  cites: [text('practice', '', 'Hardware of double-acting doors')],
  confidence: 'practice',
  why: 'A leaf that swings both ways has no stop for the latch of a bar, so where panic hardware is due it stays unlocked.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'must',
      when: all(is('doorType', 'doubleActing'), yes('panicWithLock')),
      of: { not: { family: ['none'] } },
      says: 'A lock here makes panic hardware due, and a double-acting leaf has no stop for a bar to latch against: a reviewer agrees to push and pull without a lock, or to a leaf that swings one way.',
    },
  ],
});
