import { cases } from '../rule.ts';

export const B87Cases = cases(
  ['bar and push/pull', { panicPresent: true, latch: 'pushPull' }, 'yes', { does: 'refuse panicPresent' }],
  ['bar and roller latch', { panicPresent: true, latch: 'roller' }, 'yes'],
  ['bar with its latch', { panicPresent: true, latch: 'rimExit' }, 'no'],
  ['push/pull, no bar', { panicPresent: false, latch: 'pushPull' }, 'no'],
  ['latch not seen', { panicPresent: true }, 'unknown'],
);
