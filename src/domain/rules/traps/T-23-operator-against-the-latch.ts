import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T23 = defineRule({
  id: 'T-23',
  title: 'Operator that fights the latch',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'An operator drives the leaf, so the latch must be out of the way before it starts; electrified trim leaves it out.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('operator', 'lowEnergy', 'fullPower'),
      of: { device: ['exitTrim'] },
      says: 'Electrified trim leaves the latch out and the operator pushes against it: use latch retraction or a strike.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('operator', 'powerAssist'),
      of: { device: ['exitTrim'] },
      says: 'Power assist helps only a person who has worked the lever first: check that everybody can.',
    },
  ],
  cases: cases(
    [
      'low-energy operator, trim',
      { operator: 'lowEnergy' },
      'yes',
      { clause: 'a', on: 'exitTrim/secure/free', does: 'prohibit' },
    ],
    [
      'full-power operator, fail-safe trim',
      { operator: 'fullPower' },
      'yes',
      { clause: 'a', on: 'exitTrim/safe/free' },
    ],
    ['no operator', { operator: 'none' }, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    ['power assist', { operator: 'powerAssist' }, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    ['operator not surveyed', {}, 'unknown', { clause: 'a', on: 'exitTrim/secure/free' }],
    [
      'latch retraction draws the latch',
      { operator: 'lowEnergy' },
      'no',
      { clause: 'a', on: 'latchRetractionMotor/secure/free' },
    ],
    [
      'power assist, trim',
      { operator: 'powerAssist' },
      'yes',
      { clause: 'c', on: 'exitTrim/secure/free', does: 'caution' },
    ],
    ['low-energy is clause a', { operator: 'lowEnergy' }, 'no', { clause: 'c', on: 'exitTrim/secure/free' }],
    ['operator not surveyed, trim', {}, 'unknown', { clause: 'c', on: 'exitTrim/secure/free' }],
    [
      'power assist, retraction',
      { operator: 'powerAssist' },
      'no',
      { clause: 'c', on: 'latchRetractionMotor/secure/free' },
    ],
  ),
});
