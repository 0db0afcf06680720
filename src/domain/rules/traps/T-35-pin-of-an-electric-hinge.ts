import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T35 = defineRule({
  id: 'T-35',
  title: 'The pin of an electric hinge',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'The wires run through the knuckle, and driving the pin out shears them.',
  clauses: [
    {
      effect: 'caution',
      when: is('hinges', 'butt'),
      of: { transfer: true },
      says: 'If the transfer is a wired hinge, mark it: its pin is never driven out; remove the leaf at the hinge screws.',
    },
  ],
});
