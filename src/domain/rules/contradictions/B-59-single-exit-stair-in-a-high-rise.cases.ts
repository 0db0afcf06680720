import { cases } from '../rule.ts';

export const B59Cases = cases(
  ['both', { singleExitStair: true, highRise: true }, 'yes', { does: 'refuse singleExitStair' }],
  ['low building', { singleExitStair: true, highRise: false }, 'no'],
  ['two stairs', { singleExitStair: false, highRise: true }, 'no'],
  ['height not known', { singleExitStair: true }, 'unknown'],
);
