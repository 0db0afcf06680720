import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const heldReleased = { family: ['strike', 'exitDevice'], failMode: ['secure'], keepsLatch: false } as const;
const heldByHours = all(yes('fireRated'), yes('wishScheduledUnlock'));
const hours = { ...rated, wishScheduledUnlock: true } as const;

export const R33 = defineRule({
  id: 'R-33',
  title: 'Unlocked hours on a rated door end when fire is detected',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware'), under('fireDoorLatching')],
  confidence: 'read',
  note: 'Buttons, toggling credentials and sensors that hold the latch released count like a schedule; the survey asks only for the schedule.',
  why: 'A latch that is held retracted for hours does not latch the door, unless detection lets it go again by itself.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: heldByHours,
      of: heldReleased,
      items: ['fireAlarmRelatch'],
      says: 'While it is unlocked nothing latches this fire door, so automatic fire detection must cut its power and let it latch.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(heldByHours, no('fireAlarm'), no('detectionThroughout')),
      of: heldReleased,
      items: ['doorDetector'],
      says: 'The building has no alarm or detection that could cut the power: without its own smoke detector this door may not be held unlatched.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: heldByHours,
      of: heldReleased,
      says: 'A fire door held unlatched on schedule: a reviewer confirms how detection relatches it.',
    },
  ],
  cases: cases(
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
    [
      'electrified trim stays latched while unlocked',
      hours,
      'no',
      { clause: 'a', on: 'exitTrim/secure/free' },
    ],
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
  ),
});
