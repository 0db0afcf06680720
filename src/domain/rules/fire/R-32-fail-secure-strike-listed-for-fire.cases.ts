import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

export const R32Cases = cases(
  ['rated door', rated, 'yes', { clause: 'a', on: 'strikeMortise/secure/free', does: ['fireListedStrike'] }],
  ['unrated door in an unrated wall', unrated, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['rating not known', {}, 'unknown', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['a fail-safe strike is not meant', rated, 'no', { clause: 'a', on: 'strikeMortise/safe/free' }],
  ['an electrified lock is not meant', rated, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  ['rated door', rated, 'yes', { clause: 'b', on: 'strikeCylindrical/secure/free', does: 'permit' }],
  ['unrated door in an unrated wall', unrated, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ['rating not known', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ['a fail-safe strike is not waved through', rated, 'no', { clause: 'b', on: 'strikeMortise/safe/free' }],
  [
    'a strike with nothing to release it is not waved through',
    rated,
    'no',
    { clause: 'b', on: 'strikeMortise/secure/none' },
  ],
  ['an electrified lock is not meant', rated, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
);
