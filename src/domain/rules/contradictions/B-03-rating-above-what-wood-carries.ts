import { text, under } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const seen = all(isKnown('fireLabel'), is('fireLabel', 'seen'));
const tooMuch = any(
  all(is('leafMaterial', 'woodSolidCore'), over('fireRatingMin', 20)),
  all(is('leafMaterial', 'woodMineralCore'), over('fireRatingMin', 90)),
);

export const B03 = defineRule({
  id: 'B-03',
  title: 'A rating above what the wood leaf carries',
  family: 'contradictions',
  book: 'practice',
  cites: [text('practice', '', 'Labels commonly found by leaf'), under('openingProtectives')],
  confidence: 'practice',
  why: 'Plain solid-core wood is made to 20 min and mineral core to 90, so a higher figure is a mistake unless a label says it.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(tooMuch, not(seen)),
      says: 'A leaf of {leafMaterial} is to be rated {fireRatingMin}, more than such leaves carry, and its label was not seen; check core, label and rating.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'leafMaterial',
      severity: 'warn',
      when: all(tooMuch, seen),
      says: 'The label seen allows more than a leaf of {leafMaterial} usually carries; check the core, and let the label count.',
    },
  ],
});
