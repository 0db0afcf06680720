import { cases } from '../rule.ts';

export const B17Cases = cases(
  ['over 90 min', { frameMaterial: 'wood', fireRatingMin: 91 }, 'yes', { does: 'refuse frameMaterial' }],
  ['90 min', { frameMaterial: 'wood', fireRatingMin: 90 }, 'no'],
  ['steel frame', { frameMaterial: 'hollowMetal', fireRatingMin: 180 }, 'no'],
  ['rating not known', { frameMaterial: 'wood' }, 'unknown'],
);
