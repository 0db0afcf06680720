import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const on = 'mortiseLock/secure/free';

const lobby = { egressRole: 'elevatorLobby', lobbyHasOtherExit: true } as const;

export const R96Cases = cases(
  ['lobby with a stair', lobby, 'yes', { on, does: 'permit' }],
  ['lobby without a stair', { ...lobby, lobbyHasOtherExit: false }, 'no', { on }],
  ['corridor door', { ...lobby, egressRole: 'exitAccess' }, 'no', { on }],
  ['stair not known', { egressRole: 'elevatorLobby' }, 'unknown', { on }],
  ...onEach(['magnet/safe/lobby', 'magnet/safe/alarmOnly'], 'not an ordinary lock', lobby, 'no'),
);
