import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, no, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

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
});
