import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const on = 'magnet/safe/lobby';

const free = 'mortiseLock/safe/free';

const trap = { egressRole: 'elevatorLobby', lobbyHasOtherExit: false } as const;

const open = { egressRole: 'elevatorLobby', lobbyHasOtherExit: true } as const;

export const R94Cases = cases(
  ...onEach(
    [
      'strikeMortise/secure/free',
      'magnet/safe/sensor',
      'magnet/safe/doorSwitch',
      'exitTrim/safe/stairReentry',
      'batteryLock/asIs/free',
    ],
    'lobby without a stair',
    trap,
    'yes',
    { clause: 'e', does: 'prohibit' },
  ),
  ...onEach(
    ['mechanicalLock/none/free', 'noLock/none/free', 'delayedExitDevice/safe/delayed', on],
    'lobby without a stair',
    trap,
    'no',
    'e',
  ),
  ['lobby with a stair', open, 'no', { clause: 'e', on: free }],
  ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'e', on: free }],
  ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'e', on: free }],
  ['lobby without a stair, IBC 2021', trap, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['lobby without a stair, IBC 2018', trap, 'yes', { clause: 'a', on, basis: { ibc: 2018 } }],
  ['lobby without a stair, IBC 2024', trap, 'no', { clause: 'a', on, basis: { ibc: 2024 } }],
  [
    'lobby without a stair, NFPA 101 alone',
    trap,
    'no',
    { clause: 'a', on, basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['lobby without a stair, both books', trap, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  ['lobby without a stair, no book', trap, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['lobby with a stair', open, 'no', { clause: 'a', on }],
  ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'a', on }],
  ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'a', on }],
  ['an alarm-only magnet is clause b', trap, 'no', { clause: 'a', on: 'magnet/safe/alarmOnly' }],
  ...onEach(
    [
      'magnet/safe/alarmOnly',
      'magnet/safe/buttonOnly',
      'mortiseLock/safe/credentialOut',
      'mechanicalLock/none/keyInside',
      'magnet/safe/none',
    ],
    'lobby without a stair',
    trap,
    'yes',
    'b',
  ),
  ...onEach(
    [free, 'delayedExitDevice/safe/delayed', 'magnet/safe/sensor', on],
    'lobby without a stair',
    trap,
    'no',
    'b',
  ),
  [
    'IBC 2024 changes nothing here',
    trap,
    'yes',
    { clause: 'b', on: 'magnet/safe/alarmOnly', basis: { ibc: 2024 }, does: 'prohibit' },
  ],
  ['lobby with a stair', open, 'no', { clause: 'b', on: 'magnet/safe/alarmOnly' }],
  [
    'corridor door',
    { ...trap, egressRole: 'exitAccess' },
    'no',
    { clause: 'b', on: 'magnet/safe/alarmOnly' },
  ],
  [
    'other way out not known',
    { egressRole: 'elevatorLobby' },
    'unknown',
    { clause: 'b', on: 'magnet/safe/alarmOnly' },
  ],
  ['lobby without a stair', trap, 'yes', { clause: 'c', does: 'signOff must' }],
  ['lobby with a stair', open, 'no', { clause: 'c' }],
  ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'c' }],
  ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'c' }],
  ['lobby without a stair, IBC 2021', trap, 'yes', { clause: 'd', does: 'caution' }],
  ['lobby without a stair, IBC 2024', trap, 'no', { clause: 'd', basis: { ibc: 2024 } }],
  ['lobby without a stair, NFPA 101 alone', trap, 'no', { clause: 'd', basis: { ibc: null, nfpa101: 2021 } }],
  ['lobby without a stair, both books', trap, 'yes', { clause: 'd', basis: { nfpa101: 2021 } }],
  ['lobby without a stair, no book', trap, 'yes', { clause: 'd', basis: { ibc: null } }],
  ['lobby with a stair', open, 'no', { clause: 'd' }],
  ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'd' }],
  ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'd' }],
);
