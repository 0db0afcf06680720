import { under } from '../../codes/sections.ts';
import { all, is, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const pair = {
  doorType: 'pair',
  roomUse: 'storage',
  inactiveBolts: 'manualFlush',
  fireRatingMin: 0,
  wallRatingMin: 0,
  inactiveHasHardware: false,
} as const;
const boltedPair = all(
  yes('isPair'),
  is('roomUse', 'storage', 'equipment'),
  is('inactiveBolts', 'manualFlush'),
);

export const R111 = defineRule({
  id: 'R-111',
  title: 'Manual bolts at a storage or equipment room',
  family: 'rooms',
  book: 'ibc',
  cites: [under('boltLocks')],
  confidence: 'secondary',
  note: 'Rated pairs are judged by R-45.',
  why: 'The second leaf opens for goods, not for people.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(boltedPair, no('fireRated'), no('inactiveHasHardware')),
      says: 'Manual bolts may hold the inactive leaf of this unrated pair.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(boltedPair, yes('inactiveHasHardware')),
      says: 'Remove any knob, lever or bar from the inactive leaf: with manual bolts it must not look like an exit.',
    },
  ],
  cases: cases(
    ['unrated storage pair', pair, 'yes', { clause: 'a', does: 'permit' }],
    ['unrated equipment pair', { ...pair, roomUse: 'equipment' }, 'yes', { clause: 'a' }],
    ['office pair', { ...pair, roomUse: 'office' }, 'no', { clause: 'a' }],
    ['single leaf', { ...pair, doorType: 'single' }, 'no', { clause: 'a' }],
    ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush' }, 'no', { clause: 'a' }],
    ['rated pair', { ...pair, fireRatingMin: 45 }, 'no', { clause: 'a' }],
    ['dummy lever on the inactive leaf', { ...pair, inactiveHasHardware: true }, 'no', { clause: 'a' }],
    ['rating not known', without(pair, 'fireRatingMin'), 'unknown', { clause: 'a' }],
    [
      'dummy lever on the inactive leaf',
      { ...pair, inactiveHasHardware: true },
      'yes',
      { clause: 'b', does: 'modify locksmith' },
    ],
    [
      'dummy lever, equipment room',
      { ...pair, roomUse: 'equipment', inactiveHasHardware: true },
      'yes',
      { clause: 'b' },
    ],
    ['nothing on the inactive leaf', pair, 'no', { clause: 'b' }],
    ['office pair', { ...pair, roomUse: 'office', inactiveHasHardware: true }, 'no', { clause: 'b' }],
    ['single leaf', { ...pair, doorType: 'single', inactiveHasHardware: true }, 'no', { clause: 'b' }],
    [
      'automatic bolts',
      { ...pair, inactiveBolts: 'automaticFlush', inactiveHasHardware: true },
      'no',
      { clause: 'b' },
    ],
    ['hardware not known', without(pair, 'inactiveHasHardware'), 'unknown', { clause: 'b' }],
  ),
});
