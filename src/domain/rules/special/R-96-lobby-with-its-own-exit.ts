import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
