import { cases } from '../rule.ts';

export const B74Cases = cases(
  ['no operator', { doorType: 'slidingAutomatic', operator: 'none' }, 'yes', { does: 'refuse operator' }],
  ['operator', { doorType: 'slidingAutomatic', operator: 'fullPower' }, 'no'],
  ['sliding by hand', { doorType: 'slidingManual', operator: 'none' }, 'no'],
  ['operator not surveyed', { doorType: 'slidingAutomatic' }, 'unknown'],
);
