import { cases } from '../rule.ts';

export const B02Cases = cases(
  [
    'label not seen',
    { leafMaterial: 'aluminiumMedium', fireRatingMin: 45, fireLabel: 'none' },
    'yes',
    { clause: 'a', does: 'refuse fireLabel' },
  ],
  [
    'label not seen',
    { leafMaterial: 'aluminiumWide', fireRatingMin: 45, fireLabel: 'none' },
    'yes',
    { clause: 'a' },
  ],
  ['label not asked', { leafMaterial: 'aluminiumWide', fireRatingMin: 1 }, 'yes', { clause: 'a' }],
  [
    'label seen',
    { leafMaterial: 'aluminiumWide', fireRatingMin: 45, fireLabel: 'seen' },
    'no',
    { clause: 'a' },
  ],
  [
    'not rated',
    { leafMaterial: 'aluminiumWide', fireRatingMin: 0, fireLabel: 'none' },
    'no',
    { clause: 'a' },
  ],
  [
    'hollow metal',
    { leafMaterial: 'hollowMetal', fireRatingMin: 45, fireLabel: 'none' },
    'no',
    { clause: 'a' },
  ],
  ['rating not known', { leafMaterial: 'aluminiumWide', fireLabel: 'none' }, 'unknown', { clause: 'a' }],
  [
    'label seen',
    { leafMaterial: 'aluminiumMedium', fireRatingMin: 1, fireLabel: 'seen' },
    'yes',
    { clause: 'b', does: 'warn leafMaterial' },
  ],
  [
    'label seen',
    { leafMaterial: 'aluminiumWide', fireRatingMin: 1, fireLabel: 'seen' },
    'yes',
    { clause: 'b' },
  ],
  [
    'label not seen',
    { leafMaterial: 'aluminiumWide', fireRatingMin: 45, fireLabel: 'none' },
    'no',
    { clause: 'b' },
  ],
  ['label not asked', { leafMaterial: 'aluminiumWide', fireRatingMin: 45 }, 'no', { clause: 'b' }],
  [
    'not rated',
    { leafMaterial: 'aluminiumWide', fireRatingMin: 0, fireLabel: 'seen' },
    'no',
    { clause: 'b' },
  ],
  [
    'hollow metal',
    { leafMaterial: 'hollowMetal', fireRatingMin: 45, fireLabel: 'seen' },
    'no',
    { clause: 'b' },
  ],
  ['rating not known', { leafMaterial: 'aluminiumWide', fireLabel: 'seen' }, 'unknown', { clause: 'b' }],
);
