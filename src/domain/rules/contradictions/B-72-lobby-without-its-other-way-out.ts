import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B72 = defineRule({
  id: 'B-72',
  title: 'An elevator lobby, its other exit not surveyed',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('elevatorLobby')],
  confidence: 'project',
  why: 'Whether the lobby has another exit decides whether its door may be locked at all.',
  clauses: [
    {
      effect: 'finding',
      field: 'lobbyHasOtherExit',
      severity: 'warn',
      when: all(is('egressRole', 'elevatorLobby'), not(isKnown('lobbyHasOtherExit'))),
      says: 'This door leads out of an elevator lobby, and whether the lobby has another exit was not recorded; look for it.',
    },
  ],
});
