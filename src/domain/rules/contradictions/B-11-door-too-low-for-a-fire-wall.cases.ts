import { cases } from '../rule.ts';

export const B11Cases = cases(
  [
    '2 h wall, door 89',
    { wallKind: 'fireWall', wallRatingMin: 120, fireRatingMin: 89 },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  ['2 h wall, door 90', { wallKind: 'fireWall', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
  ['wall over 1 h, door 60', { wallKind: 'fireWall', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
  ['1 h leaf of a double wall', { wallKind: 'fireWall', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
  ['wall over 2 h, door 90', { wallKind: 'fireWall', wallRatingMin: 121, fireRatingMin: 90 }, 'yes'],
  ['4 h wall, door 179', { wallKind: 'fireWall', wallRatingMin: 240, fireRatingMin: 179 }, 'yes'],
  ['4 h wall, door 180', { wallKind: 'fireWall', wallRatingMin: 240, fireRatingMin: 180 }, 'no'],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 240, fireRatingMin: 20 }, 'no'],
  ['wall not known', { wallKind: 'fireWall', fireRatingMin: 90 }, 'unknown'],
);
