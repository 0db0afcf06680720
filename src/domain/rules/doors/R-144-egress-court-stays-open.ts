import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R144 = defineRule({
  id: 'R-144',
  title: 'No exterior-space lock at an egress court',
  family: 'doors',
  book: 'ibc',
  cites: [under('egressCourts'), under('locksAndLatches')],
  confidence: 'secondary',
  why: 'The court is itself part of the exit discharge, so no one may be locked in it.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('egressRole', 'egressCourt'),
      of: { release: ['keyInside'] },
      says: 'The key lock allowed at an occupied court or terrace is not for an egress court; people leave through it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'egressCourt'),
      says: 'A reviewer confirms the path through the egress court to the public way, its gate included.',
    },
  ],
});
