import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, no } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const on = 'magnet/safe/lobby';
const free = 'mortiseLock/safe/free';
const secure = 'boltMotor/secure/lobby';
const lobby = {
  egressRole: 'elevatorLobby',
  sprinklered: true,
  fireAlarm: true,
  attendedStation: true,
} as const;
const corridor = { ...lobby, egressRole: 'exitAccess' } as const;
const atLobby = is('egressRole', 'elevatorLobby');

export const R95 = defineRule({
  id: 'R-95',
  title: 'Elevator-lobby lock comes as a full set',
  family: 'special',
  book: 'ibc',
  cites: [under('elevatorLobby'), under('elevatorLobbyNfpa')],
  confidence: 'memory',
  note: 'Both lists are from general knowledge. Sprinklers and fire alarm are asked together under either book, and an attended place is asked outright: the safe side.',
  why: 'The lobby lock is new in the IBC and lawful only with every way out of the box in place.',
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
      key: 'c',
      effect: 'prohibit',
      when: all(atLobby, any(no('sprinklered'), no('fireAlarm'))),
      of: { release: ['lobby'] },
      says: 'The lobby lock needs sprinklers throughout and a fire alarm with smoke detection in the lobby.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(atLobby, no('attendedStation')),
      of: { release: ['lobby'] },
      says: 'Nobody is always there to answer and unlock for people in the lobby.',
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
      when: all(ibc({ from: 2024 }), atLobby),
      of: { release: ['lobby'] },
      says: 'Hold the list against the printed text of the 2024 section, which is new, and against local amendments.',
    },
  ],
  cases: cases(
    ['lobby lock', lobby, 'yes', { clause: 'a', on }],
    ['corridor door', corridor, 'no', { clause: 'a', on }],
    ['role not known', {}, 'unknown', { clause: 'a', on }],
    ['a free lever', lobby, 'no', { clause: 'a', on: free }],
    ['lock that keeps its latch', lobby, 'yes', { clause: 'b', on: 'mortiseLock/safe/lobby' }],
    ['a magnet has no latch', lobby, 'no', { clause: 'b', on }],
    ['a free lever', lobby, 'no', { clause: 'b', on: free }],
    ['corridor door', corridor, 'no', { clause: 'b', on: 'mortiseLock/safe/lobby' }],
    ['role not known', {}, 'unknown', { clause: 'b', on: 'mortiseLock/safe/lobby' }],
    ['sprinklers and alarm', lobby, 'no', { clause: 'c', on }],
    ['no sprinklers', { ...lobby, sprinklered: false }, 'yes', { clause: 'c', on }],
    ['no fire alarm', { ...lobby, fireAlarm: false }, 'yes', { clause: 'c', on }],
    ['corridor door without sprinklers', { ...corridor, sprinklered: false }, 'no', { clause: 'c', on }],
    ['sprinklers not known', without(lobby, 'sprinklered'), 'unknown', { clause: 'c', on }],
    ['a free lever', { ...lobby, sprinklered: false }, 'no', { clause: 'c', on: free }],
    ['nobody at the desk', { ...lobby, attendedStation: false }, 'yes', { clause: 'd', on }],
    ['desk always staffed', lobby, 'no', { clause: 'd', on }],
    ['corridor door', { ...corridor, attendedStation: false }, 'no', { clause: 'd', on }],
    ['desk not asked', without(lobby, 'attendedStation'), 'unknown', { clause: 'd', on }],
    ['a free lever', { ...lobby, attendedStation: false }, 'no', { clause: 'd', on: free }],
    ['fail-secure bolt', lobby, 'yes', { clause: 'e', on: secure }],
    ['fail-safe magnet', lobby, 'no', { clause: 'e', on }],
    ['fail-secure free lock', lobby, 'no', { clause: 'e', on: 'mortiseLock/secure/free' }],
    ['corridor door', corridor, 'no', { clause: 'e', on: secure }],
    ['role not known', {}, 'unknown', { clause: 'e', on: secure }],
    ['lobby lock', lobby, 'yes', { clause: 'f', on }],
    ['corridor door', corridor, 'no', { clause: 'f', on }],
    ['role not known', {}, 'unknown', { clause: 'f', on }],
    ['a free lever', lobby, 'no', { clause: 'f', on: free }],
    ['both books', lobby, 'yes', { clause: 'g', on, basis: { ibc: 2024, nfpa101: 2018 } }],
    ['IBC only', lobby, 'no', { clause: 'g', on, basis: { ibc: 2024 } }],
    ['corridor door', corridor, 'no', { clause: 'g', on, basis: { nfpa101: 2018 } }],
    ['role not known', {}, 'unknown', { clause: 'g', on, basis: { nfpa101: 2018 } }],
    ['a free lever', lobby, 'no', { clause: 'g', on: free, basis: { nfpa101: 2018 } }],
    ['IBC 2024', lobby, 'yes', { clause: 'h', on, basis: { ibc: 2024 } }],
    ['IBC 2021', lobby, 'no', { clause: 'h', on, basis: { ibc: 2021 } }],
    ['corridor door', corridor, 'no', { clause: 'h', on, basis: { ibc: 2024 } }],
    ['role not known', {}, 'unknown', { clause: 'h', on, basis: { ibc: 2024 } }],
    ['a free lever', lobby, 'no', { clause: 'h', on: free, basis: { ibc: 2024 } }],
    ...onEach(['glassPatchLock/safe/lobby', 'cylindricalLock/safe/lobby'], 'lobby lock', lobby, 'yes', 'a'),
  ),
});
