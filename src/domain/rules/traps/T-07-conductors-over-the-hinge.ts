import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T07 = defineRule({
  id: 'T-07',
  title: 'Too few conductors over the hinge',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'Lock power takes two conductors and every switch in the leaf two more, so a 4-wire hinge covers a lock and one switch.',
  clauses: [
    {
      effect: 'caution',
      when: yes('wantsReader'),
      of: { transfer: true },
      says: 'Count the conductors of the transfer: 2 for the lock, 2 each for request to exit, latch monitor and a door contact in the leaf; lock, request to exit and latch monitor need 6.',
    },
  ],
});
