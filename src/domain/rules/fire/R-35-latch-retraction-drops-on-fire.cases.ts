import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

export const R35Cases = cases(
  [
    'rated door',
    rated,
    'yes',
    { clause: 'a', on: 'latchRetractionMotor/secure/free', does: ['fireAlarmRelatch'] },
  ],
  ['unrated door', unrated, 'no', { clause: 'a', on: 'latchRetractionMotor/secure/free' }],
  ['rating not known', {}, 'unknown', { clause: 'a', on: 'latchRetractionSolenoid/secure/free' }],
  ['trim keeps the latch out', rated, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['a strike is another device', rated, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
  [
    'rated, nothing detects fire',
    { ...rated, fireAlarm: false, detectionThroughout: false },
    'yes',
    { clause: 'b', on: 'latchRetractionMotor/secure/free', does: ['doorDetector'] },
  ],
  [
    'unrated, nothing detects fire',
    { ...unrated, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
  [
    'fire alarm there',
    { ...rated, fireAlarm: true, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
  [
    'detection there',
    { ...rated, fireAlarm: false, detectionThroughout: true },
    'no',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
  ['alarm not surveyed', rated, 'unknown', { clause: 'b', on: 'latchRetractionMotor/secure/free' }],
  [
    'nothing detects fire, trim',
    { ...rated, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  [
    'nothing detects fire, strike',
    { ...rated, fireAlarm: false, detectionThroughout: false },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
);
