import { cases } from '../rule.ts';

export const B16Cases = cases(
  ['no rating', { wallKind: 'fireBarrier', wallRatingMin: 0 }, 'yes', { does: 'refuse wallRatingMin' }],
  ['no rating', { wallKind: 'fireWall', wallRatingMin: 0 }, 'yes'],
  ['no rating', { wallKind: 'exitEnclosure', wallRatingMin: 0 }, 'yes'],
  ['no rating', { wallKind: 'horizontalExit', wallRatingMin: 0 }, 'yes'],
  ['one minute', { wallKind: 'fireBarrier', wallRatingMin: 1 }, 'no'],
  ['corridor may be unrated', { wallKind: 'corridor', wallRatingMin: 0 }, 'no'],
  ['rating not known', { wallKind: 'fireWall' }, 'unknown'],
);
