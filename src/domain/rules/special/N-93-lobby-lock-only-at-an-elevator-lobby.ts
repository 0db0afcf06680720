import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
