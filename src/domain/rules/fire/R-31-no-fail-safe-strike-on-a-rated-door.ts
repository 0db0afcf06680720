import { under, text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R31 = defineRule({
  id: 'R-31',
  title: 'No fail-safe strike on a fire-rated door',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  why: 'A released keeper gives way, so nothing latches the door when fire cuts the power.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('fireRated'),
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'A fail-safe strike lets go when power fails, and a fire door must stay latched.',
    },
  ],
});
