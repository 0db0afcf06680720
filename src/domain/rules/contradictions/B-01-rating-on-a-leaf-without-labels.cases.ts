import { cases } from '../rule.ts';

export const B01Cases = cases(
  [
    'rated leaf of a kind without labels',
    { leafMaterial: 'woodHollowCore', fireRatingMin: 20 },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  ['rated leaf of a kind without labels', { leafMaterial: 'aluminiumNarrow', fireRatingMin: 20 }, 'yes'],
  ['rated leaf of a kind without labels', { leafMaterial: 'glassFrameless', fireRatingMin: 20 }, 'yes'],
  ['rated leaf of a kind without labels', { leafMaterial: 'gateFramed', fireRatingMin: 20 }, 'yes'],
  ['rated leaf of a kind without labels', { leafMaterial: 'chainLink', fireRatingMin: 20 }, 'yes'],
  ['one minute is a rating too', { leafMaterial: 'chainLink', fireRatingMin: 1 }, 'yes'],
  ['storefront, not rated', { leafMaterial: 'aluminiumNarrow', fireRatingMin: 0 }, 'no'],
  ['rated hollow metal', { leafMaterial: 'hollowMetal', fireRatingMin: 20 }, 'no'],
  ['rating not known', { leafMaterial: 'glassFrameless' }, 'unknown'],
);
