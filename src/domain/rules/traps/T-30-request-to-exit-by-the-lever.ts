import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T30 = defineRule({
  id: 'T-30',
  title: 'Request to exit left off the lever',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A person who leaves by the lever opens the contact, and without a signal that is a forced door.',
  clauses: [
    {
      effect: 'require',
      items: ['requestToExit'],
      when: yes('wantsReader'),
      of: { wired: true, release: ['free', 'stairReentry'] },
      says: 'A switch in the lever or bar, or a motion detector where no wire reaches the leaf, tells the controller that somebody leaves; without it every exit raises a forced-open alarm.',
    },
  ],
  cases: cases(
    [
      'controlled door',
      { readerSides: 'secure' },
      'yes',
      { on: 'mortiseLock/secure/free', does: ['requestToExit'] },
    ],
    ['stair door', { readerSides: 'both' }, 'yes', { on: 'mortiseLock/safe/stairReentry' }],
    ['no reader', { readerSides: 'none' }, 'no', { on: 'mortiseLock/secure/free' }],
    ['reader not settled', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
    ['a magnet’s sensor does it', { readerSides: 'secure' }, 'no', { on: 'magnet/safe/sensor' }],
    ['a battery lock reports by itself', { readerSides: 'secure' }, 'no', { on: 'batteryLock/asIs/free' }],
  ),
});
