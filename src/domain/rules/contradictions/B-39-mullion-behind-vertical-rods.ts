import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'rods and mullion',
      { doorType: 'pair', mullion: true, latch: 'verticalRods' },
      'yes',
      { does: 'warn mullion' },
    ],
    ['rim devices on a mullion', { doorType: 'pair', mullion: true, latch: 'rimExit' }, 'no'],
    ['rods alone', { doorType: 'pair', mullion: false, latch: 'verticalRods' }, 'no'],
    ['single leaf', { doorType: 'single', mullion: true, latch: 'verticalRods' }, 'no'],
    ['mullion not seen', { doorType: 'pair', latch: 'verticalRods' }, 'unknown'],
  ),
});
