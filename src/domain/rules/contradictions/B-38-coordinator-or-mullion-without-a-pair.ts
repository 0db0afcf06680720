import { text } from '../../codes/sections.ts';
import { all, any, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B38 = defineRule({
  id: 'B-38',
  title: 'A coordinator or mullion without a pair',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Both exist only between two leaves.',
  clauses: [
    {
      effect: 'finding',
      field: 'doorType',
      severity: 'warn',
      when: all(no('isPair'), any(yes('coordinator'), yes('mullion'))),
      says: 'A coordinator or mullion is entered on a door with one leaf; check the door type.',
    },
  ],
  cases: cases(
    [
      'coordinator',
      { doorType: 'single', coordinator: true, mullion: false },
      'yes',
      { does: 'warn doorType' },
    ],
    ['mullion', { doorType: 'single', coordinator: false, mullion: true }, 'yes'],
    ['neither', { doorType: 'single', coordinator: false, mullion: false }, 'no'],
    ['pair', { doorType: 'pair', coordinator: true, mullion: true }, 'no'],
    ['door type not known', { coordinator: true }, 'unknown'],
  ),
});
