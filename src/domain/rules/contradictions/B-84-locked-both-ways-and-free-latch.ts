import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B84 = defineRule({
  id: 'B-84',
  title: 'A push/pull door said to be locked by a lever or bar',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A leaf without a latch has no lever or bar that opens it.',
  clauses: [
    {
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: all(
        is('latch', 'pushPull'),
        is(
          'existingArrangement',
          'freeLever',
          'freeBar',
          'deadboltPlusLatch',
          'failSafeStrike',
          'buttonBeforeBar',
        ),
      ),
      says: 'The latch is entered as push/pull and today’s locking needs a latch; look at the door edge again.',
    },
  ],
});
