import { cases } from '../rule.ts';

export const B09Cases = cases(
  [
    'rated corridor, door 19',
    { wallKind: 'corridor', wallRatingMin: 1, fireRatingMin: 19 },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  ['rated corridor, door 20', { wallKind: 'corridor', wallRatingMin: 60, fireRatingMin: 20 }, 'no'],
  ['corridor without rating', { wallKind: 'corridor', wallRatingMin: 0, fireRatingMin: 0 }, 'no'],
  ['ordinary wall', { wallKind: 'none', wallRatingMin: 60, fireRatingMin: 0 }, 'no'],
  ['door not known', { wallKind: 'corridor', wallRatingMin: 60 }, 'unknown'],
);
