import { cases } from '../rule.ts';

export const B41Cases = cases(
  ['device without a bar', { latch: 'rimExit', panicPresent: false }, 'yes', { does: 'refuse panicPresent' }],
  ['device without a bar', { latch: 'verticalRods', panicPresent: false }, 'yes'],
  ['device without a bar', { latch: 'rimPlusRods', panicPresent: false }, 'yes'],
  ['device without a bar', { latch: 'railExit', panicPresent: false }, 'yes'],
  ['device with its bar', { latch: 'rimExit', panicPresent: true }, 'no'],
  ['lever lock', { latch: 'bored', panicPresent: false }, 'no'],
  ['bar not seen', { latch: 'rimExit' }, 'unknown'],
);
