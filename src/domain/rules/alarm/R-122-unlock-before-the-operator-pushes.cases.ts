import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const driven = { operator: 'lowEnergy' } as const;

const onOperator = [
  'strikeRim/secure/free',
  'magnet/safe/sensor',
  'boltMotor/safe/doorSwitch',
  'latchRetractionMotor/secure/free',
  'delayedMagnet/safe/delayed',
];

export const R122Cases = cases(
  ...onEach(onOperator, 'low-energy operator', driven, 'yes', 'a'),
  [
    'full-power operator',
    { operator: 'fullPower' },
    'yes',
    { clause: 'a', on: 'strikeRim/secure/free', does: ['operatorSequence'] },
  ],
  [
    'power assist: a person works the latch',
    { operator: 'powerAssist' },
    'no',
    { clause: 'a', on: 'strikeRim/secure/free' },
  ],
  ['no operator', { operator: 'none' }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['operator not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeRim/secure/free' }],
  [
    'a lock that keeps its latch is a question of fit',
    driven,
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  [
    'rated, alarm, low-energy operator',
    { ...driven, fireAlarm: true, fireRatingMin: 45 },
    'yes',
    { clause: 'b', on: 'strikeRim/secure/free', does: 'caution' },
  ],
  [
    'rated, alarm, full-power operator',
    { operator: 'fullPower', fireAlarm: true, fireRatingMin: 45 },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'rated, alarm, power assist',
    { operator: 'powerAssist', fireAlarm: true, fireRatingMin: 45 },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  [
    'rated, no alarm',
    { ...driven, fireAlarm: false, fireRatingMin: 45 },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  [
    'not rated',
    { ...driven, fireAlarm: true, fireRatingMin: 0, wallRatingMin: 0 },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  [
    'alarm not surveyed',
    { ...driven, fireRatingMin: 45 },
    'unknown',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  [
    'a lock that keeps its latch',
    { ...driven, fireAlarm: true, fireRatingMin: 45 },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
);
