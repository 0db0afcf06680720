import { under } from '../../codes/sections.ts';
import { always, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const room = { egressRole: 'exitAccess' } as const;
const around = (clause: string, on: string) => [
  ...onEach([on], 'cabinet', { egressRole: 'noOccupiedSpace' }, 'no' as const, clause),
  ...onEach([on], 'role not known', {}, 'unknown' as const, clause),
];

export const R25 = defineRule({
  id: 'R-25',
  title: 'An electric bolt on an egress door: fail safe only, with a full release set',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('hardwareRelease'), under('unlatching')],
  confidence: 'secondary',
  why: 'No lever retracts this bolt, and a person leaning on the door can bind it even after it is released.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { family: ['bolt'], not: { release: ['sensor', 'doorSwitch'] } },
      says: 'An electric bolt on an egress door needs the full sensor set or a switch in the door hardware; this one has neither.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { family: ['bolt'], failMode: ['secure'] },
      says: 'This bolt stays thrown when power fails, so people would be locked in; on an egress door it must fail safe.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { family: ['bolt'], failMode: ['safe'], release: ['sensor', 'doorSwitch'] },
      says: 'A bolt can bind under side load; a reviewer must accept it here, and a lock with its own lever or bar is better.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: always,
      of: {
        family: ['bolt'],
        failMode: ['secure'],
        release: ['sensor', 'doorSwitch', 'buttonOnly', 'alarmOnly', 'lobby', 'controlled'],
      },
      says: 'What releases it breaks lock power, and a fail-secure bolt stays thrown without power: nothing here lets anyone out.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'boltMotor/secure/sensor',
        'boltSolenoid/secure/doorSwitch',
        'glassPatchLock/secure/buttonOnly',
        'boltMotor/secure/alarmOnly',
        'boltMotor/secure/lobby',
        'boltMotor/secure/controlled',
      ],
      'cabinet that nobody can enter',
      { egressRole: 'noOccupiedSpace' },
      'yes',
      { clause: 'd', does: 'prohibit' },
    ),
    ...onEach(
      ['boltMotor/safe/sensor', 'boltMotor/secure/none', 'boltMotor/secure/credentialOut'],
      'cabinet that nobody can enter',
      { egressRole: 'noOccupiedSpace' },
      'no',
      'd',
    ),
    ...onEach(
      [
        'boltMotor/safe/none',
        'boltSolenoid/safe/buttonOnly',
        'boltMotor/safe/controlled',
        'boltSolenoid/safe/lobby',
        'glassPatchLock/safe/alarmOnly',
        'boltMotor/secure/credentialOut',
      ],
      'no full set',
      room,
      'yes',
      { clause: 'a', does: 'prohibit' },
    ),
    ...onEach(
      ['boltMotor/safe/sensor', 'boltSolenoid/safe/doorSwitch', 'magnet/safe/none'],
      'a set, or no bolt',
      room,
      'no',
      'a',
    ),
    ...around('a', 'boltMotor/safe/none'),
    ...onEach(
      ['boltMotor/secure/sensor', 'boltSolenoid/secure/doorSwitch', 'glassPatchLock/secure/sensor'],
      'stays locked without power',
      room,
      'yes',
      { clause: 'b', does: 'prohibit' },
    ),
    ...onEach(['boltMotor/safe/sensor', 'strikeRim/secure/free'], 'fail safe, or no bolt', room, 'no', 'b'),
    ...around('b', 'boltMotor/secure/sensor'),
    ...onEach(
      ['boltMotor/safe/sensor', 'boltSolenoid/safe/doorSwitch', 'glassPatchLock/safe/sensor'],
      'full set, fail safe',
      room,
      'yes',
      { clause: 'c', does: 'signOff must' },
    ),
    ...onEach(
      ['boltMotor/secure/sensor', 'boltMotor/safe/none', 'magnet/safe/sensor'],
      'not meant',
      room,
      'no',
      'c',
    ),
    ...around('c', 'boltMotor/safe/sensor'),
  ),
});
