import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T41 = defineRule({
  id: 'T-41',
  title: 'Day schedule on an intermittent strike',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'Many fail-secure coils are made for short pulses and burn when a schedule holds them open all day.',
  clauses: [
    {
      effect: 'require',
      items: ['continuousDutyStrike'],
      when: yes('wishScheduledUnlock'),
      of: { family: ['strike'], failMode: ['secure'] },
      says: 'The schedule keeps the strike energized for hours: its coil must be rated for continuous duty.',
    },
  ],
});
