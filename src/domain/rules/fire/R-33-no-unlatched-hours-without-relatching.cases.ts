import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const hours = { ...rated, wishScheduledUnlock: true } as const;

export const R33Cases = cases(
  [
    'rated, hours wanted',
    hours,
    'yes',
    { clause: 'a', on: 'strikeMortise/secure/free', does: ['fireAlarmRelatch'] },
  ],
  [
    'rated, hours wanted, latch retraction',
    hours,
    'yes',
    { clause: 'a', on: 'latchRetractionMotor/secure/free' },
  ],
  [
    'rated, no hours wanted',
    { ...rated, wishScheduledUnlock: false },
    'no',
    { clause: 'a', on: 'strikeMortise/secure/free' },
  ],
  [
    'unrated, hours wanted',
    { ...unrated, wishScheduledUnlock: true },
    'no',
    { clause: 'a', on: 'strikeMortise/secure/free' },
  ],
  ['rated, hours not asked', rated, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'an electrified lock stays latched while unlocked',
    hours,
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ['electrified trim stays latched while unlocked', hours, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['a fail-safe strike is refused elsewhere', hours, 'no', { clause: 'a', on: 'strikeMortise/safe/free' }],
  ['an electric bolt is not meant', hours, 'no', { clause: 'a', on: 'boltMotor/secure/sensor' }],
  [
    'rated, hours, nothing detects fire',
    { ...hours, fireAlarm: false, detectionThroughout: false },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/free', does: ['doorDetector'] },
  ],
  [
    'the same with latch retraction',
    { ...hours, fireAlarm: false, detectionThroughout: false },
    'yes',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
  [
    'fire alarm there',
    { ...hours, fireAlarm: true, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'detection there',
    { ...hours, fireAlarm: false, detectionThroughout: true },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'nothing detects fire, no hours wanted',
    { ...rated, wishScheduledUnlock: false, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'nothing detects fire, not rated',
    { ...unrated, wishScheduledUnlock: true, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  ['alarm not surveyed', hours, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  [
    'no alarm, an electrified lock',
    { ...hours, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  [
    'no alarm, a fail-safe strike',
    { ...hours, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'strikeMortise/safe/free' },
  ],
  [
    'no alarm, an electric bolt',
    { ...hours, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'boltMotor/secure/sensor' },
  ],
  [
    'rated, hours wanted',
    hours,
    'yes',
    { clause: 'c', on: 'strikeMortise/secure/free', does: 'signOff must' },
  ],
  [
    'rated, hours wanted, latch retraction',
    hours,
    'yes',
    { clause: 'c', on: 'latchRetractionSolenoid/secure/free' },
  ],
  [
    'rated, strike pulsed only, no hours',
    { ...rated, wishScheduledUnlock: false },
    'no',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  [
    'unrated, hours wanted',
    { ...unrated, wishScheduledUnlock: true },
    'no',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  ['hours not asked', rated, 'unknown', { clause: 'c', on: 'strikeMortise/secure/free' }],
  ['a lock that stays latched needs nobody', hours, 'no', { clause: 'c', on: 'exitTrim/secure/free' }],
  ['a fail-safe strike is refused elsewhere', hours, 'no', { clause: 'c', on: 'strikeMortise/safe/free' }],
  ['an electric bolt is not meant', hours, 'no', { clause: 'c', on: 'boltMotor/secure/sensor' }],
);
