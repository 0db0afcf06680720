import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B01 = defineRule({
  id: 'B-01',
  title: 'A rating on a leaf that is not made with one',
  family: 'contradictions',
  book: 'practice',
  cites: [text('practice', '', 'Labels commonly found by leaf'), under('openingProtectives')],
  confidence: 'practice',
  why: 'Hollow-core wood, storefront aluminum, bare glass and fence leaves are not made with a fire label.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(
        is('leafMaterial', 'woodHollowCore', 'aluminiumNarrow', 'glassFrameless', 'gateFramed', 'chainLink'),
        over('fireRatingMin', 0),
      ),
      says: 'The door is to be rated {fireRatingMin}, but a leaf of {leafMaterial} carries no fire label; read the label again or correct leaf or rating.',
    },
  ],
  cases: cases(
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
  ),
});
