import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R119 = defineRule({
  id: 'R-119',
  title: 'A lock powered by the fire alarm panel',
  family: 'alarm',
  book: 'nfpa72',
  cites: [text('nfpa72', '21.9', 'Secondary power of locked doors')],
  confidence: 'read',
  note: 'The 10 minutes were read in the 2007 text; the later annex is known from a description.',
  why: 'The panel’s battery would go on holding people in after line power fails.',
  clauses: [
    {
      effect: 'caution',
      when: is('lockPowerSource', 'fireAlarmPanel'),
      of: { wired: true },
      says: 'The alarm panel’s battery may not keep a door locked against leaving for more than 10 minutes without line power, and every lock eats into its standby time: give the lock its own listed power supply.',
    },
  ],
});
