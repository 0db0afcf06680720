import { text } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T40 = defineRule({
  id: 'T-40',
  title: 'Re-entry and elevator lobby need a lock, not a strike',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'What must unlock on a signal and still latch is a fail-safe electrified lock; a strike that lets go unlatches the door.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(yes('stairSideToLock'), all(is('egressRole', 'elevatorLobby'), no('lobbyHasOtherExit'))),
      of: { family: ['strike'] },
      says: 'Stair re-entry and elevator-lobby release need a fail-safe electrified lock that stays latched, not a strike.',
    },
  ],
  cases: cases(
    ...onEach(
      ['strikeMortise/safe/free', 'strikeRim/secure/free'],
      'stair side locked',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
      'yes',
    ),
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
  ),
});
