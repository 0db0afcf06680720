import { text } from '../../codes/sections.ts';
import { all, is, isKnown } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T02 = defineRule({
  id: 'T-02',
  title: 'No fail-safe strike on a labeled door',
  family: 'traps',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  why: 'Fail-safe strikes are not listed for fire doors, and the label stays a promise even where the drawing asks no rating.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(isKnown('fireLabel'), is('fireLabel', 'seen', 'illegible', 'removed')),
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'The door carries a fire label, and a fail-safe strike is never allowed on a labeled door.',
    },
  ],
});
