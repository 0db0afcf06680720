import { text, under } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, over } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
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
  ),
});
