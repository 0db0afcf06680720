import { under } from '../../codes/sections.ts';
import { leverOrBarOnLeaf } from '../../arrangement/leafLocks.ts';
import { all, any, ibc, is, nfpa101, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const atLobby = is('egressRole', 'elevatorLobby');

export const R95 = defineRule({
  id: 'R-95',
  title: 'The elevator-lobby lock is a complete set',
  family: 'special',
  book: 'ibc',
  cites: [under('elevatorLobby'), under('elevatorLobbyNfpa')],
  confidence: 'memory',
  note: 'Both lists are from general knowledge. Sprinklers and fire alarm are asked together under either book, and an attended place is asked outright: the safe side.',
  why: 'The lobby lock is new in the IBC and allowed only with every release in place.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: atLobby,
      of: { release: ['lobby'] },
      items: [
        'fireAlarmRelease',
        'detectionRelease',
        'powerLossRelease',
        'overrideReset',
        'twoWayCommunication',
        'emergencyLighting',
        'listedLock',
      ],
      says: 'Fire alarm (other than a manual box), sprinkler flow, smoke detection in the lobby and loss of power unlock it until reset by hand; people in the lobby can talk to a staffed place that is able to unlock; both sides have emergency lighting.',
    },
    {
      key: 'b',
      effect: 'require',
      when: atLobby,
      of: { release: ['lobby'], keepsLatch: true },
      items: ['latchHardwareOnLeaf'],
      says: 'This lock stays latched after it unlocks, so a lever or bar 34 to 48 in high on the lobby side must open the latch.',
    },
    {
      key: 'i',
      effect: 'require',
      when: all(atLobby, leverOrBarOnLeaf),
      of: { release: ['lobby'], keepsLatch: false },
      items: ['latchHardwareOnLeaf'],
      says: 'The latch of the leaf holds it after the lock has let go, so a lever or bar 34 to 48 in high on the lobby side must open that latch at all hours.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(atLobby, any(no('fullSprinklers'), no('fireAlarm'))),
      of: { release: ['lobby'] },
      says: 'The lobby lock needs sprinklers throughout and a fire alarm with smoke detection in the lobby.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(atLobby, no('attendedStation')),
      of: { release: ['lobby'] },
      says: 'No one is always on hand to answer and unlock for people in the lobby.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: atLobby,
      of: { release: ['lobby'], failMode: ['secure'] },
      says: 'A lobby lock must open when its power is lost, and this device stays locked.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: atLobby,
      of: { release: ['lobby'] },
      says: 'A reviewer signs for the lobby lock, and for two exits of everyone else on the floor that do not lead through the lobby.',
    },
    {
      key: 'g',
      effect: 'caution',
      when: all(nfpa101(), atLobby),
      of: { release: ['lobby'] },
      says: 'NFPA 101 allows the lobby lock only where the chapter of this use says so.',
    },
    {
      key: 'h',
      effect: 'caution',
      when: all(ibc({ from: 2024, readTo: 2024 }), atLobby),
      of: { release: ['lobby'] },
      says: 'Check the list against the printed text of the 2024 section, which is new, and against local amendments.',
    },
  ],
});
