import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'magnet/safe/lobby';

export const N93 = defineRule({
  id: 'N-93',
  title: 'Lobby release only at an elevator lobby without its own exit',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Place of the arrangement')],
  confidence: 'project',
  why: 'The lobby arrangement was written for one place; everywhere else an ordinary lock is safer.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(not(all(isKnown('egressRole'), is('egressRole', 'elevatorLobby'))), yes('lobbyHasOtherExit')),
      of: { release: ['lobby'] },
      says: 'This is not an elevator lobby that depends on the tenant’s door, so the lobby arrangement does not apply here.',
    },
  ],
  cases: cases(
    [
      'lobby that depends on the door',
      { egressRole: 'elevatorLobby', lobbyHasOtherExit: false },
      'no',
      { on },
    ],
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
  ),
});
