import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R48 = defineRule({
  id: 'R-48',
  title: 'A strike in the inactive leaf is seldom listed',
  family: 'fire',
  book: 'practice',
  cites: [text('practice', '', 'Strikes in the inactive leaf'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'memory',
  why: 'A pocket weakens the edge that has to hold both leaves, and few pairs were tested that way.',
  clauses: [
    {
      effect: 'caution',
      when: all(yes('fireRated'), yes('isPair'), no('mullion')),
      of: { family: ['strike'] },
      says: 'Without a mullion the strike goes in the inactive leaf: that leaf then needs its own power transfer and a listing for the pocket; an electrified lock or trim is easier.',
    },
  ],
});
