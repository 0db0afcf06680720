import { cases } from '../rule.ts';

export const B39Cases = cases(
  [
    'rods and mullion',
    { doorType: 'pair', mullion: true, latch: 'verticalRods' },
    'yes',
    { does: 'warn mullion' },
  ],
  ['rim devices on a mullion', { doorType: 'pair', mullion: true, latch: 'rimExit' }, 'no'],
  ['rods alone', { doorType: 'pair', mullion: false, latch: 'verticalRods' }, 'no'],
  ['single leaf', { doorType: 'single', mullion: true, latch: 'verticalRods' }, 'no'],
  ['mullion not seen', { doorType: 'pair', latch: 'verticalRods' }, 'unknown'],
);
