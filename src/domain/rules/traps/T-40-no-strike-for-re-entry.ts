import { text } from '../../codes/sections.ts';
import { all, any, is, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T40 = defineRule({
  id: 'T-40',
  title: 'Re-entry and elevator lobby need a lock, not a strike',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A door that must unlock on a signal and still latch needs a fail-safe electrified lock; a strike that releases unlatches the door.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(
        is('egressRole', 'stairEntry'),
        all(is('egressRole', 'elevatorLobby'), no('lobbyHasOtherExit')),
      ),
      of: { family: ['strike'] },
      says: 'A strike locks the stair side or the lobby side. Stair re-entry and elevator-lobby release need a fail-safe electrified lock that stays latched, not a strike.',
    },
  ],
});
