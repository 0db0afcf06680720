import { cases } from '../rule.ts';

export const B08Cases = cases(
  [
    '1 h stair, door 59',
    { wallKind: 'exitEnclosure', wallRatingMin: 60, fireRatingMin: 59 },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  ['1 h stair, door 60', { wallKind: 'exitEnclosure', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
  ['wall below 1 h', { wallKind: 'exitEnclosure', wallRatingMin: 59, fireRatingMin: 45 }, 'no'],
  ['wall over 1 h, door 60', { wallKind: 'exitEnclosure', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
  ['2 h stair, door 89', { wallKind: 'exitEnclosure', wallRatingMin: 120, fireRatingMin: 89 }, 'yes'],
  ['2 h stair, door 90', { wallKind: 'exitEnclosure', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
  ['wall over 2 h, door 90', { wallKind: 'exitEnclosure', wallRatingMin: 121, fireRatingMin: 90 }, 'yes'],
  ['3 h shaft, door 179', { wallKind: 'exitEnclosure', wallRatingMin: 180, fireRatingMin: 179 }, 'yes'],
  ['3 h shaft, door 180', { wallKind: 'exitEnclosure', wallRatingMin: 180, fireRatingMin: 180 }, 'no'],
  ['fire barrier', { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
  ['wall not known', { wallKind: 'exitEnclosure', fireRatingMin: 60 }, 'unknown'],
);
