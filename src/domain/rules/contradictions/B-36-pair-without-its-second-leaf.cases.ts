import { cases } from '../rule.ts';

export const B36Cases = cases(
  ['not noted', { doorType: 'pair' }, 'yes', { does: 'warn inactiveBolts' }],
  ['noted', { doorType: 'pair', inactiveBolts: 'none' }, 'no'],
  ['single leaf', { doorType: 'single' }, 'no'],
  ['door type not known', {}, 'unknown'],
);
