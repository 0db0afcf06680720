import { cases } from '../rule.ts';

export const B72Cases = cases(
  ['not noted', { egressRole: 'elevatorLobby' }, 'yes', { does: 'warn lobbyHasOtherExit' }],
  ['noted', { egressRole: 'elevatorLobby', lobbyHasOtherExit: false }, 'no'],
  ['room door', { egressRole: 'exitAccess' }, 'no'],
  ['role not known', {}, 'unknown'],
);
