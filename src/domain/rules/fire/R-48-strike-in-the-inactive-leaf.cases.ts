import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const pair = { ...rated, doorType: 'pair', mullion: false } as const;

export const R48Cases = cases(
  ['rated pair without mullion, strike', pair, 'yes', { on: 'strikeMortise/secure/free', does: 'caution' }],
  ['rated pair on a mullion', { ...pair, mullion: true }, 'no', { on: 'strikeRim/secure/free' }],
  ['single leaf', { ...pair, doorType: 'single' }, 'no', { on: 'strikeMortise/secure/free' }],
  ['unrated pair', { ...pair, ...unrated }, 'no', { on: 'strikeMortise/secure/free' }],
  ['mullion not surveyed', { ...rated, doorType: 'pair' }, 'unknown', { on: 'strikeMortise/secure/free' }],
  ['electrified lock', pair, 'no', { on: 'mortiseLock/secure/free' }],
);
