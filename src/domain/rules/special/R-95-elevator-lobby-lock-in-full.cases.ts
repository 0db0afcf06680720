import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'magnet/safe/lobby';

const free = 'mortiseLock/safe/free';

const secure = 'boltMotor/secure/lobby';

const lobby = {
  egressRole: 'elevatorLobby',
  sprinklered: true,
  sprinklerKind: 'nfpa13',
  fireAlarm: true,
  attendedStation: true,
} as const;

const corridor = { ...lobby, egressRole: 'exitAccess' } as const;

export const R95Cases = cases(
  ...onEach(
    ['magnet/safe/lobby', 'boltMotor/safe/lobby'],
    'latch stays on the leaf',
    { ...lobby, latch: 'mortise' },
    'yes',
    {
      clause: 'i',
      does: ['latchHardwareOnLeaf'],
    },
  ),
  ['bar stays on the leaf', { ...lobby, latch: 'rimExit' }, 'yes', { clause: 'i', on }],
  ['push and pull', { ...lobby, latch: 'pushPull' }, 'no', { clause: 'i', on }],
  ['latch not known', lobby, 'unknown', { clause: 'i', on }],
  ['corridor', { ...corridor, latch: 'mortise' }, 'no', { clause: 'i', on }],
  [
    'a lock of its own is clause b',
    { ...lobby, latch: 'mortise' },
    'no',
    { clause: 'i', on: 'mortiseLock/safe/lobby' },
  ],
  [
    'lobby lock',
    lobby,
    'yes',
    {
      clause: 'a',
      on,
      does: [
        'fireAlarmRelease',
        'detectionRelease',
        'powerLossRelease',
        'overrideReset',
        'twoWayCommunication',
        'emergencyLighting',
        'listedLock',
      ],
    },
  ],
  ['corridor door', corridor, 'no', { clause: 'a', on }],
  ['role not known', {}, 'unknown', { clause: 'a', on }],
  ['a free lever', lobby, 'no', { clause: 'a', on: free }],
  [
    'lock that keeps its latch',
    lobby,
    'yes',
    { clause: 'b', on: 'mortiseLock/safe/lobby', does: ['latchHardwareOnLeaf'] },
  ],
  ['a magnet has no latch', lobby, 'no', { clause: 'b', on }],
  ['a free lever', lobby, 'no', { clause: 'b', on: free }],
  ['corridor door', corridor, 'no', { clause: 'b', on: 'mortiseLock/safe/lobby' }],
  ['role not known', {}, 'unknown', { clause: 'b', on: 'mortiseLock/safe/lobby' }],
  ['sprinklers and alarm', lobby, 'no', { clause: 'c', on }],
  [
    'no sprinklers',
    { ...lobby, sprinklered: false, sprinklerKind: 'nfpa13' },
    'yes',
    { clause: 'c', on, does: 'prohibit' },
  ],
  ['no fire alarm', { ...lobby, fireAlarm: false }, 'yes', { clause: 'c', on }],
  [
    'corridor door without sprinklers',
    { ...corridor, sprinklered: false, sprinklerKind: 'nfpa13' },
    'no',
    { clause: 'c', on },
  ],
  ['sprinklers not known', without(lobby, 'sprinklered'), 'unknown', { clause: 'c', on }],
  [
    'a free lever',
    { ...lobby, sprinklered: false, sprinklerKind: 'nfpa13' },
    'no',
    { clause: 'c', on: free },
  ],
  ['nobody at the desk', { ...lobby, attendedStation: false }, 'yes', { clause: 'd', on, does: 'prohibit' }],
  ['desk always staffed', lobby, 'no', { clause: 'd', on }],
  ['corridor door', { ...corridor, attendedStation: false }, 'no', { clause: 'd', on }],
  ['desk not asked', without(lobby, 'attendedStation'), 'unknown', { clause: 'd', on }],
  ['a free lever', { ...lobby, attendedStation: false }, 'no', { clause: 'd', on: free }],
  ['fail-secure bolt', lobby, 'yes', { clause: 'e', on: secure, does: 'prohibit' }],
  ['fail-safe magnet', lobby, 'no', { clause: 'e', on }],
  ['fail-secure free lock', lobby, 'no', { clause: 'e', on: 'mortiseLock/secure/free' }],
  ['corridor door', corridor, 'no', { clause: 'e', on: secure }],
  ['role not known', {}, 'unknown', { clause: 'e', on: secure }],
  ['lobby lock', lobby, 'yes', { clause: 'f', on, does: 'signOff must' }],
  ['corridor door', corridor, 'no', { clause: 'f', on }],
  ['role not known', {}, 'unknown', { clause: 'f', on }],
  ['a free lever', lobby, 'no', { clause: 'f', on: free }],
  ['both books', lobby, 'yes', { clause: 'g', on, basis: { ibc: 2024, nfpa101: 2018 }, does: 'caution' }],
  ['IBC only', lobby, 'no', { clause: 'g', on, basis: { ibc: 2024 } }],
  ['corridor door', corridor, 'no', { clause: 'g', on, basis: { nfpa101: 2018 } }],
  ['role not known', {}, 'unknown', { clause: 'g', on, basis: { nfpa101: 2018 } }],
  ['a free lever', lobby, 'no', { clause: 'g', on: free, basis: { nfpa101: 2018 } }],
  ['IBC 2024', lobby, 'yes', { clause: 'h', on, basis: { ibc: 2024 }, does: 'caution' }],
  ['IBC 2021', lobby, 'no', { clause: 'h', on, basis: { ibc: 2021 } }],
  ['corridor door', corridor, 'no', { clause: 'h', on, basis: { ibc: 2024 } }],
  ['role not known', {}, 'unknown', { clause: 'h', on, basis: { ibc: 2024 } }],
  ['a free lever', lobby, 'no', { clause: 'h', on: free, basis: { ibc: 2024 } }],
  ...onEach(['glassPatchLock/safe/lobby', 'cylindricalLock/safe/lobby'], 'lobby lock', lobby, 'yes', 'a'),
);
