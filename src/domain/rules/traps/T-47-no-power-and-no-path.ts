import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'remote supply',
      { powerAtDoor: false, cablePath: true },
      'yes',
      { on: 'strikeMortise/secure/free', does: 'caution' },
    ],
    ['power at hand', { powerAtDoor: true, cablePath: true }, 'no', { on: 'strikeMortise/secure/free' }],
    ['no path either', { powerAtDoor: false, cablePath: false }, 'no', { on: 'strikeMortise/secure/free' }],
    ['power not surveyed', { cablePath: true }, 'unknown', { on: 'strikeMortise/secure/free' }],
    [
      'remote supply, battery lock',
      { powerAtDoor: false, cablePath: true },
      'no',
      { on: 'batteryLock/asIs/free' },
    ],
  ),
});
