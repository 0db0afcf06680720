import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const stair = { egressRole: 'stairEntry' } as const;

const unlawful = [
  'magnet/safe/none',
  'magnet/safe/alarmOnly',
  'magnet/safe/buttonOnly',
  'magnet/safe/credentialOut',
  'magnet/safe/lobby',
  'mechanicalLock/none/keyInside',
];

const whole = [
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'delayedExitDevice/safe/delayed',
  'magnet/safe/controlled',
  'batteryLock/asIs/clinical',
  'detentionLock/none/attended',
];

export const R60Cases = cases(
  ...onEach(unlawful, 'door into a stair', stair, 'yes', { clause: 'a', does: 'prohibit' }),
  ...onEach(whole, 'door into a stair', stair, 'no', 'a'),
  ['free lever', stair, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  ['stair release', stair, 'no', { clause: 'a', on: 'exitTrim/safe/stairReentry' }],
  ['way out of the stair', { egressRole: 'stairDischarge' }, 'no', { clause: 'a', on: 'magnet/safe/none' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/none' }],
  ...onEach(whole, 'door into a stair', stair, 'yes', { clause: 'b', does: 'signOff must' }),
  ['free lever', stair, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['way out of the stair', { egressRole: 'stairDischarge' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  [
    'floor side to be locked',
    { ...stair, stairLockWanted: 'floorSide' },
    'yes',
    { clause: 'c', does: 'warn stairLockWanted' },
  ],
  ['both sides to be locked', { ...stair, stairLockWanted: 'both' }, 'yes', { clause: 'c' }],
  ['stair side only', { ...stair, stairLockWanted: 'stairSide' }, 'no', { clause: 'c' }],
  ['not a stair door', { egressRole: 'exitAccess', stairLockWanted: 'floorSide' }, 'no', { clause: 'c' }],
  ['wish not asked', stair, 'unknown', { clause: 'c' }],
);
