import { cases } from '../rule.ts';

export const B15Cases = cases(
  ['unrated wall of one minute', { wallKind: 'none', wallRatingMin: 1 }, 'yes', { does: 'refuse wallKind' }],
  ['unrated wall of 0', { wallKind: 'none', wallRatingMin: 0 }, 'no'],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 60 }, 'no'],
  ['rating not known', { wallKind: 'none' }, 'unknown'],
);
