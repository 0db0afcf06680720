import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ['bored latch', { latch: 'bored' }, 'yes', { on: 'strikeCylindrical/secure/free', does: 'caution' }],
    [
      'bored latch and deadbolt',
      { latch: 'boredPlusDeadbolt' },
      'yes',
      { on: 'strikeCylindrical/secure/free' },
    ],
    ['mortise latch', { latch: 'mortise' }, 'yes', { on: 'strikeMortise/secure/free' }],
    ['mortise latch with deadbolt', { latch: 'mortiseDeadbolt' }, 'yes', { on: 'strikeMortise/secure/free' }],
    ['narrow-stile deadlatch', { latch: 'deadlatch' }, 'yes', { on: 'strikeCylindrical/secure/free' }],
    ['rods have none', { latch: 'verticalRods' }, 'no', { on: 'strikeRim/secure/free' }],
    ['not surveyed', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
    ['a lock keeps its own strike', { latch: 'mortise' }, 'no', { on: 'mortiseLock/secure/free' }],
  ),
});
