import { cases } from '../rule.ts';

export const B10Cases = cases(
  [
    'half-hour partition, door 19',
    { wallKind: 'otherPartition', wallRatingMin: 1, fireRatingMin: 19 },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  [
    'half-hour partition, door 20',
    { wallKind: 'otherPartition', wallRatingMin: 59, fireRatingMin: 20 },
    'no',
  ],
  ['1 h partition, door 44', { wallKind: 'otherPartition', wallRatingMin: 60, fireRatingMin: 44 }, 'yes'],
  ['1 h partition, door 45', { wallKind: 'otherPartition', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
  ['no rating', { wallKind: 'otherPartition', wallRatingMin: 0, fireRatingMin: 0 }, 'no'],
  ['corridor', { wallKind: 'corridor', wallRatingMin: 60, fireRatingMin: 20 }, 'no'],
  ['wall not known', { wallKind: 'otherPartition', fireRatingMin: 20 }, 'unknown'],
);
