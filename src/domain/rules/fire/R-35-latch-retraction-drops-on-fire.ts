import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const retraction = { family: ['exitDevice'], keepsLatch: false } as const;

export const R35 = defineRule({
  id: 'R-35',
  title: 'Latch retraction on a rated door releases on fire',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware'), under('fireDoorLatching')],
  confidence: 'secondary',
  why: 'A latch drawn back by power holds nothing; detection has to cut that power so the latch springs out.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: yes('fireRated'),
      of: retraction,
      items: ['fireAlarmRelatch'],
      says: 'Fire detection cuts the retraction power; without power the latch projects and the door latches as it closes.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('fireRated'), no('fireAlarm'), no('detectionThroughout')),
      of: retraction,
      items: ['doorDetector'],
      says: 'Nothing in the building detects fire, so the retraction needs its own smoke detector at this door.',
    },
  ],
  cases: cases(
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
  ),
});
