import { cases } from '../rule.ts';

export const T23Cases = cases(
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
);
