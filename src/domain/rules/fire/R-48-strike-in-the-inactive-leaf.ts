import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const pair = { ...rated, doorType: 'pair', mullion: false } as const;

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
  cases: cases(
    ['rated pair without mullion, strike', pair, 'yes', { on: 'strikeMortise/secure/free', does: 'caution' }],
    ['rated pair on a mullion', { ...pair, mullion: true }, 'no', { on: 'strikeRim/secure/free' }],
    ['single leaf', { ...pair, doorType: 'single' }, 'no', { on: 'strikeMortise/secure/free' }],
    ['unrated pair', { ...pair, ...unrated }, 'no', { on: 'strikeMortise/secure/free' }],
    ['mullion not surveyed', { ...rated, doorType: 'pair' }, 'unknown', { on: 'strikeMortise/secure/free' }],
    ['electrified lock', pair, 'no', { on: 'mortiseLock/secure/free' }],
  ),
});
