import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T17 = defineRule({
  id: 'T-17',
  title: 'Deadlatch that drops into the keeper',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A deadlatch that is not held back by the strike face no longer guards the latch, which can then be slipped.',
  clauses: [
    {
      effect: 'caution',
      when: is('latch', 'bored', 'boredPlusDeadbolt', 'mortise', 'mortiseDeadbolt', 'deadlatch'),
      of: { family: ['strike'] },
      says: 'The auxiliary deadlatch must rest on the strike’s face or ramp; if it drops into the keeper the latch can be slipped.',
    },
  ],
});
