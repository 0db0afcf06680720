import { cases } from '../rule.ts';

export const B12Cases = cases(
  [
    'wall just short of 2 h',
    { wallKind: 'horizontalExit', wallRatingMin: 119 },
    'yes',
    { clause: 'a', does: 'refuse wallRatingMin' },
  ],
  ['wall of 2 h', { wallKind: 'horizontalExit', wallRatingMin: 120 }, 'no', { clause: 'a' }],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 60 }, 'no', { clause: 'a' }],
  ['wall not known', { wallKind: 'horizontalExit' }, 'unknown', { clause: 'a' }],
  [
    '2 h wall, door 89',
    { wallKind: 'horizontalExit', wallRatingMin: 120, fireRatingMin: 89 },
    'yes',
    { clause: 'b', does: 'refuse fireRatingMin' },
  ],
  [
    '2 h wall, door 90',
    { wallKind: 'horizontalExit', wallRatingMin: 120, fireRatingMin: 90 },
    'no',
    { clause: 'b' },
  ],
  [
    'wall over 2 h, door 179',
    { wallKind: 'horizontalExit', wallRatingMin: 121, fireRatingMin: 179 },
    'yes',
    { clause: 'b' },
  ],
  [
    'wall over 2 h, door 180',
    { wallKind: 'horizontalExit', wallRatingMin: 121, fireRatingMin: 180 },
    'no',
    { clause: 'b' },
  ],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 180, fireRatingMin: 20 }, 'no', { clause: 'b' }],
  ['door not known', { wallKind: 'horizontalExit', wallRatingMin: 120 }, 'unknown', { clause: 'b' }],
);
