import { cases } from '../rule.ts';

export const R14Cases = cases(
  ['both done', { basisConfirmed: true, amendmentsReviewed: true }, 'no'],
  [
    'edition not confirmed',
    { basisConfirmed: false, amendmentsReviewed: true },
    'yes',
    { does: 'signOff must' },
  ],
  ['amendments not read', { basisConfirmed: true, amendmentsReviewed: false }, 'yes'],
  ['neither answered', {}, 'unknown'],
  ['one done, the other not answered', { basisConfirmed: true }, 'unknown'],
);
