import { cases } from '../rule.ts';

export const B42Cases = cases(
  [
    'label without a device',
    { latch: 'bored', panicPresent: false, exitHardwareFireListed: true, lessBottomRod: false },
    'yes',
    { does: 'warn latch' },
  ],
  [
    'rods without a device',
    { latch: 'bored', panicPresent: false, exitHardwareFireListed: false, lessBottomRod: true },
    'yes',
  ],
  [
    'neither',
    { latch: 'bored', panicPresent: false, exitHardwareFireListed: false, lessBottomRod: false },
    'no',
  ],
  [
    'exit device',
    { latch: 'rimExit', panicPresent: true, exitHardwareFireListed: true, lessBottomRod: true },
    'no',
  ],
  ['bar not seen', { latch: 'bored', exitHardwareFireListed: true }, 'unknown'],
);
