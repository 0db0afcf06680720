import { text } from '../../codes/sections.ts';
import { any, is, yes } from '../../logic/condition.ts';
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
      effect: 'prohibit',
      when: any(yes('wishUnlockOnAlarm'), is('egressRole', 'stairEntry')),
      of: { device: ['batteryLock'] },
      says: 'This door must unlock on a signal, and a battery lock has no wire for it and stays as it was.',
    },
  ],
});
