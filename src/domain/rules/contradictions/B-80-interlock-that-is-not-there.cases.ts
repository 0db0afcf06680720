import { cases } from '../rule.ts';

export const B80Cases = cases(
  [
    'holds, but none',
    { interlockHoldsEgress: true, wishInterlock: false },
    'yes',
    { does: 'refuse wishInterlock' },
  ],
  ['interlock', { interlockHoldsEgress: true, wishInterlock: true }, 'no'],
  ['neither', { interlockHoldsEgress: false, wishInterlock: false }, 'no'],
  ['interlock not asked', { interlockHoldsEgress: true }, 'unknown'],
);
