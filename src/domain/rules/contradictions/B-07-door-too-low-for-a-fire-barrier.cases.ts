import { cases } from '../rule.ts';

export const B07Cases = cases(
  [
    '1 h wall, door 44',
    { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 44 },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  ['1 h wall, door 45', { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
  ['wall below 1 h', { wallKind: 'fireBarrier', wallRatingMin: 59, fireRatingMin: 20 }, 'no'],
  ['wall over 1 h, door 60', { wallKind: 'fireBarrier', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
  ['1 h wall, door 60', { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
  ['2 h wall, door 89', { wallKind: 'fireBarrier', wallRatingMin: 120, fireRatingMin: 89 }, 'yes'],
  ['2 h wall, door 90', { wallKind: 'fireBarrier', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
  ['wall over 2 h, door 90', { wallKind: 'fireBarrier', wallRatingMin: 121, fireRatingMin: 90 }, 'yes'],
  ['3 h wall, door 179', { wallKind: 'fireBarrier', wallRatingMin: 180, fireRatingMin: 179 }, 'yes'],
  ['3 h wall, door 180', { wallKind: 'fireBarrier', wallRatingMin: 180, fireRatingMin: 180 }, 'no'],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 60, fireRatingMin: 20 }, 'no'],
  ['wall not known', { wallKind: 'fireBarrier', fireRatingMin: 45 }, 'unknown'],
);
