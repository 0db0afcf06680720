import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const room = { egressRole: 'exitAccess' } as const;

const around = (clause: string, on: string) => [
  ...onEach([on], 'cabinet', { egressRole: 'noOccupiedSpace' }, 'no' as const, clause),
  ...onEach([on], 'role not known', {}, 'unknown' as const, clause),
];

export const R25Cases = cases(
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
);
