import { cases } from '../rule.ts';

export const T32Cases = cases(
  [
    'controlled leaf without closer',
    { doorType: 'single', closing: 'none', readerSides: 'secure' },
    'yes',
    { does: ['closer'] },
  ],
  ['closer there', { doorType: 'single', closing: 'selfClosing', readerSides: 'secure' }, 'no'],
  ['no reader', { doorType: 'single', closing: 'none', readerSides: 'none' }, 'no'],
  ['sliding leaf', { doorType: 'slidingManual', closing: 'none', readerSides: 'secure' }, 'no'],
  ['closing not surveyed', { doorType: 'single', readerSides: 'secure' }, 'unknown'],
);
