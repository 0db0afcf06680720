import { cases } from '../rule.ts';

export const B79Cases = cases(
  ['rated', { doorType: 'doubleActing', fireRatingMin: 20 }, 'yes', { clause: 'a', does: 'refuse doorType' }],
  ['not rated', { doorType: 'doubleActing', fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'a' }],
  ['single leaf', { doorType: 'single', fireRatingMin: 20 }, 'no', { clause: 'a' }],
  ['rating not known', { doorType: 'doubleActing' }, 'unknown', { clause: 'a' }],
  ['latch', { doorType: 'doubleActing', latch: 'bored' }, 'yes', { clause: 'b', does: 'warn latch' }],
  ['latch', { doorType: 'doubleActing', latch: 'mortise' }, 'yes', { clause: 'b' }],
  ['latch', { doorType: 'doubleActing', latch: 'mortiseDeadbolt' }, 'yes', { clause: 'b' }],
  ['latch', { doorType: 'doubleActing', latch: 'boredPlusDeadbolt' }, 'yes', { clause: 'b' }],
  ['latch', { doorType: 'doubleActing', latch: 'rimExit' }, 'yes', { clause: 'b' }],
  ['latch', { doorType: 'doubleActing', latch: 'rimPlusRods' }, 'yes', { clause: 'b' }],
  ['latch', { doorType: 'doubleActing', latch: 'deadlatch' }, 'yes', { clause: 'b' }],
  ['push and pull', { doorType: 'doubleActing', latch: 'pushPull' }, 'no', { clause: 'b' }],
  ['single leaf', { doorType: 'single', latch: 'mortise' }, 'no', { clause: 'b' }],
  ['latch not seen', { doorType: 'doubleActing' }, 'unknown', { clause: 'b' }],
);
