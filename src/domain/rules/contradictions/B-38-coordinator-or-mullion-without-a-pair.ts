import { text } from '../../codes/sections.ts';
import { all, any, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
