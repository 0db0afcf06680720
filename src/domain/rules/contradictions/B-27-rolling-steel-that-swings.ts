import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B27 = defineRule({
  id: 'B-27',
  title: 'Rolling steel that swings',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A curtain that rolls up is not a leaf, and people cannot leave by it the same way.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafMaterial',
      severity: 'refuse',
      when: all(is('leafMaterial', 'rollingSteel'), yes('isSwinging')),
      says: 'The leaf is entered as rolling steel and the door as swinging; only one can be right, and egress depends on it.',
    },
  ],
  cases: cases(
    [
      'swinging',
      { leafMaterial: 'rollingSteel', doorType: 'single' },
      'yes',
      { does: 'refuse leafMaterial' },
    ],
    ['swinging', { leafMaterial: 'rollingSteel', doorType: 'pair' }, 'yes'],
    ['coiling door', { leafMaterial: 'rollingSteel', doorType: 'overhead' }, 'no'],
    ['hollow metal', { leafMaterial: 'hollowMetal', doorType: 'single' }, 'no'],
    ['door type not known', { leafMaterial: 'rollingSteel' }, 'unknown'],
  ),
});
