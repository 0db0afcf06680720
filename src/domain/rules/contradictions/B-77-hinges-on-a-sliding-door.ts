import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B77 = defineRule({
  id: 'B-77',
  title: 'Hinges on a sliding door, or a track on a swinging one',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Sliding doors run on a track; swinging doors hang on hinges or pivots.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'hinges',
      severity: 'warn',
      when: all(
        is('doorType', 'slidingManual', 'slidingAutomatic', 'overhead', 'grille', 'gateSlide'),
        is('hinges', 'butt', 'continuous', 'swingClear'),
      ),
      says: 'A door that slides or rolls is entered as hanging on hinges; check door type and hanging.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'hinges',
      severity: 'warn',
      when: all(yes('isSwinging'), is('hinges', 'track')),
      says: 'A swinging door is entered as running on a track; check door type and hanging.',
    },
  ],
  cases: cases(
    [
      'hinges on a slider',
      { doorType: 'slidingManual', hinges: 'butt' },
      'yes',
      { clause: 'a', does: 'warn hinges' },
    ],
    ['hinges on a slider', { doorType: 'slidingAutomatic', hinges: 'butt' }, 'yes', { clause: 'a' }],
    ['hinges on a slider', { doorType: 'overhead', hinges: 'butt' }, 'yes', { clause: 'a' }],
    ['hinges on a slider', { doorType: 'grille', hinges: 'butt' }, 'yes', { clause: 'a' }],
    ['hinges on a slider', { doorType: 'gateSlide', hinges: 'butt' }, 'yes', { clause: 'a' }],
    ['hinges on a slider', { doorType: 'slidingManual', hinges: 'continuous' }, 'yes', { clause: 'a' }],
    ['hinges on a slider', { doorType: 'slidingManual', hinges: 'swingClear' }, 'yes', { clause: 'a' }],
    ['track', { doorType: 'slidingManual', hinges: 'track' }, 'no', { clause: 'a' }],
    ['breakaway on pivots', { doorType: 'slidingAutomatic', hinges: 'pivot' }, 'no', { clause: 'a' }],
    ['swinging', { doorType: 'single', hinges: 'butt' }, 'no', { clause: 'a' }],
    ['hanging not seen', { doorType: 'slidingManual' }, 'unknown', { clause: 'a' }],
    [
      'track on a swinging door',
      { doorType: 'single', hinges: 'track' },
      'yes',
      { clause: 'b', does: 'warn hinges' },
    ],
    ['hinges', { doorType: 'single', hinges: 'butt' }, 'no', { clause: 'b' }],
    ['slider', { doorType: 'slidingManual', hinges: 'track' }, 'no', { clause: 'b' }],
    ['hanging not seen', { doorType: 'single' }, 'unknown', { clause: 'b' }],
  ),
});
