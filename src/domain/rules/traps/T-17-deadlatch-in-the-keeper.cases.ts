import { cases } from '../rule.ts';

export const T17Cases = cases(
  ['bored latch', { latch: 'bored' }, 'yes', { on: 'strikeCylindrical/secure/free', does: 'caution' }],
  [
    'bored latch and deadbolt',
    { latch: 'boredPlusDeadbolt' },
    'yes',
    { on: 'strikeCylindrical/secure/free' },
  ],
  ['mortise latch', { latch: 'mortise' }, 'yes', { on: 'strikeMortise/secure/free' }],
  ['mortise latch with deadbolt', { latch: 'mortiseDeadbolt' }, 'yes', { on: 'strikeMortise/secure/free' }],
  ['narrow-stile deadlatch', { latch: 'deadlatch' }, 'yes', { on: 'strikeCylindrical/secure/free' }],
  ['rods have none', { latch: 'verticalRods' }, 'no', { on: 'strikeRim/secure/free' }],
  ['not surveyed', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
  ['a lock keeps its own strike', { latch: 'mortise' }, 'no', { on: 'mortiseLock/secure/free' }],
);
