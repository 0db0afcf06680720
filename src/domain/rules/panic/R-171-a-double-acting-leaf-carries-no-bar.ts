import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R171 = defineRule({
  id: 'R-171',
  title: 'A double-acting leaf carries no push bar',
  family: 'panic',
  book: 'practice',
  cites: [text('practice', '', 'Hardware of double-acting doors'), under('panicHardware')],
  confidence: 'practice',
  note: 'That only panic hardware may latch or lock the door is the code’s word; that none is made for a leaf which swings both ways is trade practice.',
  why: 'A leaf that swings both ways has no stop for the latch of a bar, so where panic hardware is due the leaf stays unlocked.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(is('doorType', 'doubleActing'), yes('panicWithLock')),
      of: { not: { family: ['none'] } },
      says: 'A lock here makes panic hardware due, and a double-acting leaf has no stop for a bar to latch against: push and pull stays without a lock, or the leaf is replaced by one that swings one way.',
    },
  ],
});
