import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T47 = defineRule({
  id: 'T-47',
  title: 'Power from a remote supply',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A long run loses volts before it reaches the lock. Where neither power nor a path exists, R-166 speaks.',
  clauses: [
    {
      effect: 'caution',
      when: all(no('powerAtDoor'), yes('cablePath')),
      of: { wired: true },
      says: 'The power comes from a remote supply: calculate the voltage drop.',
    },
  ],
});
