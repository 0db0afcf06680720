import { cases } from '../rule.ts';

export const R31Cases = cases(
  [
    '90 min door, fail-safe strike',
    { fireRatingMin: 90 },
    'yes',
    { on: 'strikeMortise/safe/free', does: 'prohibit' },
  ],
  ['20 min door is rated too', { fireRatingMin: 20 }, 'yes', { on: 'strikeCylindrical/safe/free' }],
  [
    'door not rated, wall not rated',
    { fireRatingMin: 0, wallRatingMin: 0 },
    'no',
    { on: 'strikeMortise/safe/free' },
  ],
  [
    'door said unrated in a rated corridor wall',
    { fireRatingMin: 0, wallRatingMin: 60, wallKind: 'corridor' },
    'yes',
    { on: 'strikeMortise/safe/free' },
  ],
  ['fail secure strike is not meant', { fireRatingMin: 90 }, 'no', { on: 'strikeMortise/secure/free' }],
  ['a fail-safe lock keeps its latch', { fireRatingMin: 90 }, 'no', { on: 'mortiseLock/safe/free' }],
  ['rating not known', {}, 'unknown', { on: 'strikeMortise/safe/free' }],
);
