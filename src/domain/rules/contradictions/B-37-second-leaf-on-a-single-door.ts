import { text } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B37 = defineRule({
  id: 'B-37',
  title: 'A second leaf noted on a single door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A door either has a second leaf or it does not.',
  clauses: [
    {
      effect: 'finding',
      field: 'doorType',
      severity: 'warn',
      when: all(
        no('isPair'),
        any(
          is('inactiveBolts', 'manualFlush', 'automaticFlush', 'constantLatching', 'rods', 'rim'),
          yes('inactiveNeededForCapacity'),
          yes('inactiveHasHardware'),
        ),
      ),
      says: 'Facts of a second leaf are entered, yet the door type has none; check whether it is a pair.',
    },
  ],
});
