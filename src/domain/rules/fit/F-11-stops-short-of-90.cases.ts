import { cases } from '../rule.ts';

export const F11Cases = cases(
  ['swinging leaf stops early', { doorType: 'single', opensTo90: false }, 'yes', { does: 'warn opensTo90' }],
  ['swinging leaf opens fully', { doorType: 'single', opensTo90: true }, 'no'],
  ['sliding leaf', { doorType: 'slidingManual', opensTo90: false }, 'no'],
  ['not surveyed', { doorType: 'single' }, 'unknown'],
);
