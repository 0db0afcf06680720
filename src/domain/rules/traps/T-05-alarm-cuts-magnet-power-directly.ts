import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T05 = defineRule({
  id: 'T-05',
  title: 'The fire alarm cuts the magnet’s power directly',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A controller that hangs keeps its relay, and the magnet, where they were.',
  clauses: [
    {
      effect: 'caution',
      when: yes('fireAlarm'),
      of: { device: ['magnet', 'shearMagnet', 'delayedMagnet'] },
      says: 'Where the fire alarm releases the magnet it cuts the lock power itself and holds it off until reset; a relay of the access controller alone is not enough.',
    },
  ],
});
