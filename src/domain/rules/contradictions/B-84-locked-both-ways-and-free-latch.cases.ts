import { cases } from '../rule.ts';

export const B84Cases = cases(
  [
    'locking that needs a latch',
    { latch: 'pushPull', existingArrangement: 'freeLever' },
    'yes',
    { does: 'warn latch' },
  ],
  ['locking that needs a latch', { latch: 'pushPull', existingArrangement: 'freeBar' }, 'yes'],
  ['locking that needs a latch', { latch: 'pushPull', existingArrangement: 'deadboltPlusLatch' }, 'yes'],
  ['locking that needs a latch', { latch: 'pushPull', existingArrangement: 'failSafeStrike' }, 'yes'],
  ['locking that needs a latch', { latch: 'pushPull', existingArrangement: 'buttonBeforeBar' }, 'yes'],
  ['magnet', { latch: 'pushPull', existingArrangement: 'magnetFullSet' }, 'no'],
  ['latch there', { latch: 'bored', existingArrangement: 'freeLever' }, 'no'],
  ['locking not seen', { latch: 'pushPull' }, 'unknown'],
);
