import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const driven = { ...rated, operator: 'lowEnergy' } as const;

export const R43Cases = cases(
  ['rated, low-energy operator', driven, 'yes', { clause: 'a', does: ['fireListedOperator'] }],
  ['rated, full-power operator', { ...rated, operator: 'fullPower' }, 'yes', { clause: 'a' }],
  ['rated, power assist', { ...rated, operator: 'powerAssist' }, 'yes', { clause: 'a' }],
  ['rated, no operator', { ...rated, operator: 'none' }, 'no', { clause: 'a' }],
  ['unrated, operator', { ...unrated, operator: 'fullPower' }, 'no', { clause: 'a' }],
  ['operator not surveyed', rated, 'unknown', { clause: 'a' }],
  [
    'rated, low-energy operator, strike',
    driven,
    'yes',
    { clause: 'b', on: 'strikeRim/secure/free', does: ['fireAlarmRelatch'] },
  ],
  [
    'rated, full-power operator, retraction',
    { ...rated, operator: 'fullPower' },
    'yes',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
  [
    'rated, power assist: a person works the latch',
    { ...rated, operator: 'powerAssist' },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  [
    'unrated, operator',
    { ...unrated, operator: 'fullPower' },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  ['operator not surveyed', rated, 'unknown', { clause: 'b', on: 'strikeRim/secure/free' }],
  ['trim keeps the latch out', driven, 'no', { clause: 'b', on: 'exitTrim/secure/free' }],
  ['a fail-safe strike is refused elsewhere', driven, 'no', { clause: 'b', on: 'strikeRim/safe/free' }],
  ['a bolt is another device', driven, 'no', { clause: 'b', on: 'boltMotor/secure/sensor' }],
);
