import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
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
      key: 'b',
      effect: 'require',
      items: ['operatorSequence'],
      when: is('operator', 'lowEnergy', 'fullPower'),
      of: {
        device: [
          'strikeMortise',
          'strikeCylindrical',
          'strikeRim',
          'latchRetractionMotor',
          'latchRetractionSolenoid',
        ],
      },
      says: 'The latch is freed first and the operator drives after it.',
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
      { clause: 'a', on: 'exitTrim/secure/free' },
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
    ...onEach(
      [
        'strikeMortise/secure/free',
        'strikeCylindrical/secure/free',
        'strikeRim/secure/free',
        'latchRetractionMotor/secure/free',
        'latchRetractionSolenoid/secure/free',
      ],
      'low-energy operator',
      { operator: 'lowEnergy' },
      'yes',
      'b',
    ),
    [
      'full-power operator, strike',
      { operator: 'fullPower' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    ['no operator, strike', { operator: 'none' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
    ['operator not surveyed, strike', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'low-energy operator, magnet has no latch',
      { operator: 'lowEnergy' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    ['power assist, trim', { operator: 'powerAssist' }, 'yes', { clause: 'c', on: 'exitTrim/secure/free' }],
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
