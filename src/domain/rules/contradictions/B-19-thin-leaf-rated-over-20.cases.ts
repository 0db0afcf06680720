import { cases } from '../rule.ts';

export const B19Cases = cases(
  [
    '1-3/8 in rated over 20',
    { leafThicknessIn: 1.375, fireRatingMin: 21, leafMaterial: 'hollowMetal' },
    'yes',
    { does: 'warn leafThicknessIn' },
  ],
  [
    '1-3/8 in rated over 20',
    { leafThicknessIn: 1.375, fireRatingMin: 21, leafMaterial: 'woodMineralCore' },
    'yes',
  ],
  [
    '1-3/8 in rated over 20',
    { leafThicknessIn: 1.375, fireRatingMin: 21, leafMaterial: 'woodSolidCore' },
    'yes',
  ],
  ['1-3/4 in', { leafThicknessIn: 1.75, fireRatingMin: 45, leafMaterial: 'hollowMetal' }, 'no'],
  ['a hair below 1-3/4 in', { leafThicknessIn: 1.74, fireRatingMin: 45, leafMaterial: 'hollowMetal' }, 'yes'],
  ['20 min', { leafThicknessIn: 1.375, fireRatingMin: 20, leafMaterial: 'woodSolidCore' }, 'no'],
  ['coiling door', { leafThicknessIn: 0.75, fireRatingMin: 90, leafMaterial: 'rollingSteel' }, 'no'],
  ['thick leaf', { leafThicknessIn: 2.5, fireRatingMin: 90, leafMaterial: 'hollowMetal' }, 'no'],
  ['very thin', { leafThicknessIn: 0.7, fireRatingMin: 45, leafMaterial: 'hollowMetal' }, 'yes'],
  ['thickness not measured', { fireRatingMin: 90, leafMaterial: 'hollowMetal' }, 'unknown'],
);
