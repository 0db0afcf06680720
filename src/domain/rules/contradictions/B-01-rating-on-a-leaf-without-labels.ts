import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
