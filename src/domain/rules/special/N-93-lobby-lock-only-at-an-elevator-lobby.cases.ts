import { cases } from '../rule.ts';

const on = 'magnet/safe/lobby';

export const N93Cases = cases(
  ['lobby that depends on the door', { egressRole: 'elevatorLobby', lobbyHasOtherExit: false }, 'no', { on }],
  [
    'lobby with a stair',
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: true },
    'yes',
    { on, does: 'prohibit' },
  ],
  ['lobby, stair not known', { egressRole: 'elevatorLobby' }, 'unknown', { on }],
  ['corridor door', { egressRole: 'exitAccess', lobbyHasOtherExit: false }, 'yes', { on }],
  ['role not known', { lobbyHasOtherExit: false }, 'yes', { on }],
  ['a free lever is not meant', { egressRole: 'exitAccess' }, 'no', { on: 'mortiseLock/safe/free' }],
);
