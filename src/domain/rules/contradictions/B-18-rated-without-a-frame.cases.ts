import { cases } from '../rule.ts';

export const B18Cases = cases(
  ['no frame', { frameMaterial: 'none', fireRatingMin: 1 }, 'yes', { does: 'refuse frameMaterial' }],
  ['no frame', { frameMaterial: 'posts', fireRatingMin: 1 }, 'yes'],
  ['not rated', { frameMaterial: 'none', fireRatingMin: 0 }, 'no'],
  ['steel frame', { frameMaterial: 'hollowMetal', fireRatingMin: 90 }, 'no'],
  ['rating not known', { frameMaterial: 'none' }, 'unknown'],
);
