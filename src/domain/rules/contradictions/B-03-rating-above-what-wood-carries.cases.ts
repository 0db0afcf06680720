import { cases } from '../rule.ts';

export const B03Cases = cases(
  [
    'plain solid core over 20 min',
    { leafMaterial: 'woodSolidCore', fireRatingMin: 21, fireLabel: 'none' },
    'yes',
    { clause: 'a', does: 'refuse fireRatingMin' },
  ],
  [
    'plain solid core of 20 min',
    { leafMaterial: 'woodSolidCore', fireRatingMin: 20, fireLabel: 'none' },
    'no',
    { clause: 'a' },
  ],
  [
    'mineral core over 90 min, label not asked',
    { leafMaterial: 'woodMineralCore', fireRatingMin: 91 },
    'yes',
    { clause: 'a' },
  ],
  [
    'mineral core of 90 min',
    { leafMaterial: 'woodMineralCore', fireRatingMin: 90, fireLabel: 'none' },
    'no',
    { clause: 'a' },
  ],
  [
    'plain solid core of 90 min with its label',
    { leafMaterial: 'woodSolidCore', fireRatingMin: 90, fireLabel: 'seen' },
    'no',
    { clause: 'a' },
  ],
  [
    'hollow metal of 180 min',
    { leafMaterial: 'hollowMetal', fireRatingMin: 180, fireLabel: 'none' },
    'no',
    { clause: 'a' },
  ],
  ['rating not known', { leafMaterial: 'woodSolidCore' }, 'unknown', { clause: 'a' }],
  [
    'plain solid core over 20 min with a label',
    { leafMaterial: 'woodSolidCore', fireRatingMin: 21, fireLabel: 'seen' },
    'yes',
    { clause: 'b', does: 'warn leafMaterial' },
  ],
  [
    'plain solid core of 20 min',
    { leafMaterial: 'woodSolidCore', fireRatingMin: 20, fireLabel: 'seen' },
    'no',
    { clause: 'b' },
  ],
  [
    'mineral core over 90 min with a label',
    { leafMaterial: 'woodMineralCore', fireRatingMin: 91, fireLabel: 'seen' },
    'yes',
    { clause: 'b' },
  ],
  [
    'mineral core of 90 min',
    { leafMaterial: 'woodMineralCore', fireRatingMin: 90, fireLabel: 'seen' },
    'no',
    { clause: 'b' },
  ],
  [
    'no label seen',
    { leafMaterial: 'woodSolidCore', fireRatingMin: 90, fireLabel: 'none' },
    'no',
    { clause: 'b' },
  ],
  ['label not asked', { leafMaterial: 'woodSolidCore', fireRatingMin: 90 }, 'no', { clause: 'b' }],
  [
    'hollow metal',
    { leafMaterial: 'hollowMetal', fireRatingMin: 180, fireLabel: 'seen' },
    'no',
    { clause: 'b' },
  ],
  ['rating not known', { leafMaterial: 'woodSolidCore', fireLabel: 'seen' }, 'unknown', { clause: 'b' }],
);
