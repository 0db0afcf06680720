import { cases } from '../rule.ts';

export const B14Cases = cases(
  [
    '1 h wall, door 44',
    { wallKind: 'exterior', wallRatingMin: 60, fireRatingMin: 44 },
    'yes',
    { does: 'warn fireRatingMin' },
  ],
  ['1 h wall, door 45', { wallKind: 'exterior', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
  ['wall below 1 h', { wallKind: 'exterior', wallRatingMin: 59, fireRatingMin: 0 }, 'no'],
  ['wall over 1 h, door 60', { wallKind: 'exterior', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
  ['1 h wall, door 60', { wallKind: 'exterior', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
  ['2 h wall, door 89', { wallKind: 'exterior', wallRatingMin: 120, fireRatingMin: 89 }, 'yes'],
  ['2 h wall, door 90', { wallKind: 'exterior', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 120, fireRatingMin: 20 }, 'no'],
  ['wall not known', { wallKind: 'exterior', fireRatingMin: 0 }, 'unknown'],
);
