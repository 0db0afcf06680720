import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, no, not } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

const on = 'magnet/safe/lobby';
const free = 'mortiseLock/safe/free';
const trap = { egressRole: 'elevatorLobby', lobbyHasOtherExit: false } as const;
const open = { egressRole: 'elevatorLobby', lobbyHasOtherExit: true } as const;
const lobbyOnlyDoor = all(is('egressRole', 'elevatorLobby'), no('lobbyHasOtherExit'));
const lobbyLockOpen = any(ibc({ from: 2024, readTo: 2024 }), nfpaAlone);

export const R94 = defineRule({
  id: 'R-94',
  title: 'An elevator lobby keeps an exit',
  family: 'special',
  book: 'ibc',
  cites: [
    under('elevatorLobby'),
    under('elevatorLobbyNfpa'),
    text('ibc', '3006.4', 'Elevator lobby exit access'),
  ],
  confidence: 'secondary',
  why: 'A person who steps out of an elevator in a fire is in a closed box if the only other door is locked.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(lobbyOnlyDoor, not(lobbyLockOpen)),
      of: { release: ['lobby'] },
      says: 'The lobby has no other exit, and the adopted code does not accept a lock there that opens on fire alarm.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: lobbyOnlyDoor,
      of: { release: ['alarmOnly', 'buttonOnly', 'credentialOut', 'keyInside', 'none'] },
      says: 'The lobby has no other exit, so this door must let people out of it without card, key, bare button or alarm.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: lobbyOnlyDoor,
      // The lever, bar or sensor of these stands on the tenant's side; nothing of it helps a person in the lobby.
      of: {
        release: ['free', 'stairReentry', 'sensor', 'doorSwitch'],
        not: { family: ['mechanical', 'none'] },
      },
      says: 'The lobby has no other exit, and this lock opens freely only for people on the tenant’s side of the door.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: lobbyOnlyDoor,
      says: 'The elevator lobby has no exit of its own; a reviewer signs for its means of egress.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(lobbyOnlyDoor, not(lobbyLockOpen)),
      says: 'What remains: delayed egress where the group allows it, an alarmed but unlocked door, or an open corridor from the lobby to a stair.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'strikeMortise/secure/free',
        'magnet/safe/sensor',
        'magnet/safe/doorSwitch',
        'exitTrim/safe/stairReentry',
        'batteryLock/asIs/free',
      ],
      'lobby without a stair',
      trap,
      'yes',
      { clause: 'e', does: 'prohibit' },
    ),
    ...onEach(
      ['mechanicalLock/none/free', 'noLock/none/free', 'delayedExitDevice/safe/delayed', on],
      'lobby without a stair',
      trap,
      'no',
      'e',
    ),
    ['lobby with a stair', open, 'no', { clause: 'e', on: free }],
    ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'e', on: free }],
    ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'e', on: free }],
    ['lobby without a stair, IBC 2021', trap, 'yes', { clause: 'a', on, does: 'prohibit' }],
    ['lobby without a stair, IBC 2018', trap, 'yes', { clause: 'a', on, basis: { ibc: 2018 } }],
    ['lobby without a stair, IBC 2024', trap, 'no', { clause: 'a', on, basis: { ibc: 2024 } }],
    [
      'lobby without a stair, NFPA 101 alone',
      trap,
      'no',
      { clause: 'a', on, basis: { ibc: null, nfpa101: 2021 } },
    ],
    ['lobby without a stair, both books', trap, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
    ['lobby without a stair, no book', trap, 'yes', { clause: 'a', on, basis: { ibc: null } }],
    ['lobby with a stair', open, 'no', { clause: 'a', on }],
    ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'a', on }],
    ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'a', on }],
    ['an alarm-only magnet is clause b', trap, 'no', { clause: 'a', on: 'magnet/safe/alarmOnly' }],
    ...onEach(
      [
        'magnet/safe/alarmOnly',
        'magnet/safe/buttonOnly',
        'mortiseLock/safe/credentialOut',
        'mechanicalLock/none/keyInside',
        'magnet/safe/none',
      ],
      'lobby without a stair',
      trap,
      'yes',
      'b',
    ),
    ...onEach(
      [free, 'delayedExitDevice/safe/delayed', 'magnet/safe/sensor', on],
      'lobby without a stair',
      trap,
      'no',
      'b',
    ),
    [
      'IBC 2024 changes nothing here',
      trap,
      'yes',
      { clause: 'b', on: 'magnet/safe/alarmOnly', basis: { ibc: 2024 }, does: 'prohibit' },
    ],
    ['lobby with a stair', open, 'no', { clause: 'b', on: 'magnet/safe/alarmOnly' }],
    [
      'corridor door',
      { ...trap, egressRole: 'exitAccess' },
      'no',
      { clause: 'b', on: 'magnet/safe/alarmOnly' },
    ],
    [
      'other way out not known',
      { egressRole: 'elevatorLobby' },
      'unknown',
      { clause: 'b', on: 'magnet/safe/alarmOnly' },
    ],
    ['lobby without a stair', trap, 'yes', { clause: 'c', does: 'signOff must' }],
    ['lobby with a stair', open, 'no', { clause: 'c' }],
    ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'c' }],
    ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'c' }],
    ['lobby without a stair, IBC 2021', trap, 'yes', { clause: 'd', does: 'caution' }],
    ['lobby without a stair, IBC 2024', trap, 'no', { clause: 'd', basis: { ibc: 2024 } }],
    [
      'lobby without a stair, NFPA 101 alone',
      trap,
      'no',
      { clause: 'd', basis: { ibc: null, nfpa101: 2021 } },
    ],
    ['lobby without a stair, both books', trap, 'yes', { clause: 'd', basis: { nfpa101: 2021 } }],
    ['lobby without a stair, no book', trap, 'yes', { clause: 'd', basis: { ibc: null } }],
    ['lobby with a stair', open, 'no', { clause: 'd' }],
    ['corridor door', { ...trap, egressRole: 'exitAccess' }, 'no', { clause: 'd' }],
    ['other way out not known', { egressRole: 'elevatorLobby' }, 'unknown', { clause: 'd' }],
  ),
});
