import { text } from '../../codes/sections.ts';
import { all, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B19 = defineRule({
  id: 'B-19',
  title: 'A thin leaf rated over 20 min min',
  family: 'contradictions',
  book: 'practice',
  cites: [text('practice', '', 'Rated leaves are 1-3/4 in thick')],
  confidence: 'practice',
  why: 'Labels above 20 min are for 1-3/4 in leaves.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafThicknessIn',
      severity: 'warn',
      when: all(
        below('leafThicknessIn', 'commercialLeafThicknessIn'),
        over('fireRatingMin', 20),
        is('leafMaterial', 'hollowMetal', 'woodMineralCore', 'woodSolidCore'),
      ),
      says: 'The leaf measures {leafThicknessIn} and is to be rated {fireRatingMin}; leaves of that rating are 1-3/4 in thick, so measure again.',
    },
  ],
});
