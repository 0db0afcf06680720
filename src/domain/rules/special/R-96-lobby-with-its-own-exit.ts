import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'mortiseLock/secure/free';
const lobby = { egressRole: 'elevatorLobby', lobbyHasOtherExit: true } as const;

export const R96 = defineRule({
  id: 'R-96',
  title: 'Lobby with its own exit: an ordinary lock will do',
  family: 'special',
  book: 'ibc',
  cites: [under('elevatorLobby'), under('freeEgressIbc')],
  confidence: 'secondary',
  why: 'People in the lobby leave by their own stair, so the tenant door need not let them in.',
  clauses: [
    {
      effect: 'permit',
      when: all(is('egressRole', 'elevatorLobby'), yes('lobbyHasOtherExit')),
      of: { release: ['free'] },
      says: 'The lobby has its own way to an exit, so the tenant door may be locked against the lobby, fail secure, as long as it opens freely from the tenant side.',
    },
  ],
  cases: cases(
    ['lobby with a stair', lobby, 'yes', { on, does: 'permit' }],
    ['lobby without a stair', { ...lobby, lobbyHasOtherExit: false }, 'no', { on }],
    ['corridor door', { ...lobby, egressRole: 'exitAccess' }, 'no', { on }],
    ['stair not known', { egressRole: 'elevatorLobby' }, 'unknown', { on }],
    ...onEach(['magnet/safe/lobby', 'magnet/safe/alarmOnly'], 'not an ordinary lock', lobby, 'no'),
  ),
});
