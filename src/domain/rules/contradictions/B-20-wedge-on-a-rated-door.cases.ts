import { cases } from '../rule.ts';

export const B20Cases = cases(
  ['wedged fire door', { fireRatingMin: 20, holdOpen: 'wedge' }, 'yes', { does: 'warn holdOpen' }],
  ['detector magnet', { fireRatingMin: 20, holdOpen: 'detectorReleased' }, 'no'],
  ['not rated', { fireRatingMin: 0, wallRatingMin: 0, holdOpen: 'wedge' }, 'no'],
  ['hold-open not seen', { fireRatingMin: 20 }, 'unknown'],
);
