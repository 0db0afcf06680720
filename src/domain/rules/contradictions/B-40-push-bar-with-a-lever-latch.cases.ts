import { cases } from '../rule.ts';

export const B40Cases = cases(
  ['bar and another lock', { panicPresent: true, latch: 'bored' }, 'yes', { does: 'refuse latch' }],
  ['bar and another lock', { panicPresent: true, latch: 'boredPlusDeadbolt' }, 'yes'],
  ['bar and another lock', { panicPresent: true, latch: 'deadboltOnly' }, 'yes'],
  ['bar and another lock', { panicPresent: true, latch: 'mortiseDeadbolt' }, 'yes'],
  ['bar and another lock', { panicPresent: true, latch: 'deadlatch' }, 'yes'],
  ['bar and another lock', { panicPresent: true, latch: 'hookbolt' }, 'yes'],
  ['bar and another lock', { panicPresent: true, latch: 'patch' }, 'yes'],
  ['bar with its own latch', { panicPresent: true, latch: 'rimExit' }, 'no'],
  ['bar with its own latch', { panicPresent: true, latch: 'mortise' }, 'no'],
  ['lever lock, no bar', { panicPresent: false, latch: 'bored' }, 'no'],
  ['latch not seen', { panicPresent: true }, 'unknown'],
);
