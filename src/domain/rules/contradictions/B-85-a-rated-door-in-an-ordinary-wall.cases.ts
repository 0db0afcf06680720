import { cases } from '../rule.ts';

export const B85Cases = cases(
  [
    'door of 20 min in an ordinary wall',
    { fireRatingMin: 20, wallKind: 'none' },
    'yes',
    { does: 'warn wallKind' },
  ],
  ['one minute is a rating', { fireRatingMin: 1, wallKind: 'none' }, 'yes'],
  ['unrated door', { fireRatingMin: 0, wallKind: 'none' }, 'no'],
  ['corridor wall', { fireRatingMin: 20, wallKind: 'corridor' }, 'no'],
  ['wall not known', { fireRatingMin: 20 }, 'unknown'],
);
