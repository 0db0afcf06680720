import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T36 = defineRule({
  id: 'T-36',
  title: 'A 34 in leaf is not 32 in clear',
  family: 'traps',
  book: 'ada',
  cites: [text('ada', '404.2.3', 'Clear width')],
  confidence: 'inferred',
  why: 'Leaf thickness, hinge and stop take about 2-3/4 in, so a 34 in leaf on butt hinges leaves about 31-1/4 in.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafWidthIn',
      severity: 'warn',
      when: all(
        is('doorType', 'single'),
        is('hinges', 'butt'),
        any(yes('isEgress'), yes('accessibleRoute')),
        under('leafWidthIn', 'buttHingeLeafWidthIn'),
        not(isKnown('clearWidthIn')),
      ),
      says: 'A {leafWidthIn} leaf on butt hinges leaves less than 32 in clear by calculation: measure it, or hang it on swing-clear hinges.',
    },
  ],
});
