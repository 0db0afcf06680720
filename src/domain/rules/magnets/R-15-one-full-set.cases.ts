import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { oneOfEachMagnet } from './given.ts';

const room = { egressRole: 'exitAccess' } as const;

export const R15Cases = cases(
  ...onEach(oneOfEachMagnet, 'room door', room, 'yes', { clause: 'a', does: 'signOff must' }),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
  ...onEach(
    ['mortiseLock/secure/free', 'boltMotor/safe/sensor', 'delayedExitDevice/safe/delayed'],
    'no magnet',
    room,
    'no',
    'a',
  ),
  ...onEach(
    ['magnet/safe/none', 'magnet/safe/alarmOnly', 'shearMagnet/safe/buttonOnly', 'magnet/safe/credentialOut'],
    'no set',
    room,
    'yes',
    { clause: 'b', does: 'prohibit' },
  ),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'b', on: 'magnet/safe/none' }],
  ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/none' }],
  ...onEach(
    [
      'magnet/safe/sensor',
      'magnet/safe/doorSwitch',
      'magnet/safe/controlled',
      'magnet/safe/lobby',
      'boltMotor/safe/none',
    ],
    'a set, or no magnet',
    room,
    'no',
    'b',
  ),
);
