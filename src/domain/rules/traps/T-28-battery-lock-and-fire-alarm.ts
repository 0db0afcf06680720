import { text } from '../../codes/sections.ts';
import { is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T28 = defineRule({
  id: 'T-28',
  title: 'A battery lock has no wire to the fire alarm',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'Nothing that the alarm does reaches a lock without a wire, unless its radio release is listed.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('egressRole', 'stairEntry'),
      of: { device: ['batteryLock'] },
      says: 'This door must unlock on a signal, and a battery lock has no wire for it and stays as it was.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('wishUnlockOnAlarm'),
      of: { device: ['batteryLock'] },
      says: 'The owner wants the outside unlocked on fire alarm: a battery lock has no wire for it and stays locked outside. People get out by its lever or bar, with or without an alarm.',
    },
  ],
});
