import { cases } from '../rule.ts';

export const B57Cases = cases(
  ['low building', { fireCommandCenter: true, highRise: false }, 'yes', { does: 'warn fireCommandCenter' }],
  ['high-rise', { fireCommandCenter: true, highRise: true }, 'no'],
  ['none', { fireCommandCenter: false, highRise: false }, 'no'],
  ['height not known', { fireCommandCenter: true }, 'unknown'],
);
