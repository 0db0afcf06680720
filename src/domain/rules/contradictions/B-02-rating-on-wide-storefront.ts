import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, not, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const seen = all(isKnown('fireLabel'), is('fireLabel', 'seen'));
const storefront = all(is('leafMaterial', 'aluminiumMedium', 'aluminiumWide'), over('fireRatingMin', 0));

export const B02 = defineRule({
  id: 'B-02',
  title: 'A rating on a medium or wide storefront leaf',
  family: 'contradictions',
  book: 'practice',
  cites: [text('practice', '', 'Labels commonly found by leaf'), under('openingProtectives')],
  confidence: 'practice',
  why: 'Storefront stiles are normally not rated, so only a label that somebody read counts.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'fireLabel',
      severity: 'refuse',
      when: all(storefront, not(seen)),
      says: 'A storefront leaf is to be rated {fireRatingMin} and its label was not seen; ask for the label or the listing.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'leafMaterial',
      severity: 'warn',
      when: all(storefront, seen),
      says: 'A label was seen on a storefront leaf, which is rare; check that it is a fire label and what the leaf is made of.',
    },
  ],
});
