import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const driven = { ...rated, operator: 'lowEnergy' } as const;

export const R43 = defineRule({
  id: 'R-43',
  title: 'An operator on a fire door stops on alarm',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.1', 'Closing devices'), under('powerDoors')],
  confidence: 'secondary',
  why: 'A motor that opens the leaf again, or a latch it holds back, undoes the fire door.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('fireRated'), is('operator', 'lowEnergy', 'fullPower', 'powerAssist')),
      items: ['fireListedOperator'],
      says: 'The operator is listed for fire doors and is cut off by the fire alarm, so that the door closes and stays closed.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('fireRated'), is('operator', 'lowEnergy', 'fullPower')),
      of: { family: ['strike', 'exitDevice'], failMode: ['secure'], keepsLatch: false },
      items: ['fireAlarmRelatch'],
      says: 'What releases the latch for the operator also loses power on fire detection, so the door latches when it closes.',
    },
  ],
  cases: cases(
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
  ),
});
