import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T40Cases = cases(
  ...onEach(
    ['strikeMortise/safe/free', 'strikeRim/secure/free'],
    'stair side locked',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'yes',
  ),
  [
    'stair door whose sides are to stay open',
    { egressRole: 'stairEntry', stairLockWanted: 'none' },
    'yes',
    { on: 'strikeMortise/secure/free' },
  ],
  ['stair door, wish not asked', { egressRole: 'stairEntry' }, 'yes', { on: 'strikeMortise/secure/free' }],
  [
    'lobby without another exit',
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: false },
    'yes',
    { on: 'strikeMortise/secure/free', does: 'prohibit' },
  ],
  [
    'lobby with another exit',
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: true },
    'no',
    { on: 'strikeMortise/secure/free' },
  ],
  [
    'office door',
    { egressRole: 'exitAccess', lobbyHasOtherExit: false },
    'no',
    { on: 'strikeMortise/secure/free' },
  ],
  [
    'lobby, other exit not known',
    { egressRole: 'elevatorLobby' },
    'unknown',
    { on: 'strikeMortise/secure/free' },
  ],
  [
    'fail-safe lock',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'no',
    { on: 'mortiseLock/safe/stairReentry' },
  ],
);
