import { cases } from '../rule.ts';

export const T29Cases = cases(
  ['controlled pair', { doorType: 'pair', readerSides: 'secure' }, 'yes', { does: ['doorPositionInactive'] }],
  ['single leaf', { doorType: 'single', readerSides: 'secure' }, 'no'],
  ['pair without reader', { doorType: 'pair', readerSides: 'none' }, 'no'],
  ['reader not settled', { doorType: 'pair' }, 'unknown'],
);
