import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T22 = defineRule({
  id: 'T-22',
  title: 'Head magnet on a leaf with rods',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'Rods latch a leaf at top and bottom; a magnet at the head alone lets the bottom flex.',
  clauses: [
    {
      effect: 'caution',
      when: is('latch', 'verticalRods'),
      of: { device: ['magnet', 'delayedMagnet'] },
      says: 'The magnet holds only the top: the bottom of the leaf flexes, by several inches on narrow stiles.',
    },
  ],
});
