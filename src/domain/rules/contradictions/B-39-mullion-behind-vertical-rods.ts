import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B39 = defineRule({
  id: 'B-39',
  title: 'A mullion and vertical rods on the same pair',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Rods latch into head and floor, and are chosen where there is no mullion.',
  clauses: [
    {
      effect: 'finding',
      field: 'mullion',
      severity: 'warn',
      when: all(yes('isPair'), yes('mullion'), is('latch', 'verticalRods')),
      says: 'The pair has vertical rods and a mullion; one of the two was probably misread, so look again.',
    },
  ],
});
