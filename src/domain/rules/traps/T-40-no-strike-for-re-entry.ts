import { text } from '../../codes/sections.ts';
import { all, any, is, no } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
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
  ),
});
