import { under } from '../../codes/sections.ts';
import { all, any, atLeast, ibc, is, not, under as below, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';
import { bothCodes, nfpaOnly } from './given.ts';

/** The survey counts the other delayed doors, so one other makes two on the path. */
const another = atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathIbc');
const twoAllowed = any(
  is('occupancyGroup', 'I-2', 'I-3'),
  all(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-4'), yes('fullSprinklers')),
);
const on = 'delayedExitDevice/safe/delayed';
const office = {
  egressRole: 'stairEntry',
  delayedDoorsOnPath: 1,
  occupancyGroup: 'B',
  sprinklered: true,
  sprinklerKind: 'nfpa13',
} as const;
const care = ['I-1.1', 'I-1.2', 'I-4'] as const;

export const R68 = defineRule({
  id: 'R-68',
  title: 'Not a delay at the stair and another at its foot',
  family: 'stairs',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'read',
  note: 'Read as quoted. Two delayed doors in Groups I-1 and I-4 with sprinklers: from general knowledge. NFPA 101 sets no general number.',
  why: 'Two delays in one egress path add up while smoke follows people down the stair.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(
        ibc(),
        yes('isStairDoor'),
        any(all(another, not(twoAllowed)), atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathGroupIIbc')),
      ),
      of: { release: ['delayed'] },
      says: 'Another door in the same egress path is already delayed, and the stair may not add a second delay here.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        yes('isStairDoor'),
        twoAllowed,
        another,
        below('delayedDoorsOnPath', 'delayedDoorsPerPathGroupIIbc'),
      ),
      of: { release: ['delayed'] },
      says: 'This use may have two delayed doors in one egress path if both delays together stay within 30 s; a reviewer confirms it.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpaAlone, yes('isStairDoor'), another),
      of: { release: ['delayed'] },
      says: 'NFPA 101 counts delayed doors only in some occupancy chapters: a reviewer reads the chapter for this second delay.',
    },
  ],
  cases: cases(
    ['second delay at an office stair', office, 'yes', { clause: 'a', on, does: 'prohibit' }],
    [
      'the same at the foot of the stair',
      { ...office, egressRole: 'stairDischarge' },
      'yes',
      { clause: 'a', on },
    ],
    ['no other delayed door', { ...office, delayedDoorsOnPath: 0 }, 'no', { clause: 'a', on }],
    ['not at a stair: R-87', { ...office, egressRole: 'exitAccess' }, 'no', { clause: 'a', on }],
    ['hospital, second delay', { ...office, occupancyGroup: 'I-2' }, 'no', { clause: 'a', on }],
    ['detention, second delay', { ...office, occupancyGroup: 'I-3' }, 'no', { clause: 'a', on }],
    [
      'hospital without sprinklers, second delay',
      { ...office, occupancyGroup: 'I-2', sprinklered: false, sprinklerKind: 'nfpa13' },
      'no',
      { clause: 'a', on },
    ],
    [
      'hospital, third delay',
      { ...office, occupancyGroup: 'I-2', delayedDoorsOnPath: 2 },
      'yes',
      { clause: 'a', on },
    ],
    ...care.map(
      (occupancyGroup) =>
        [
          `${occupancyGroup} with sprinklers, second delay`,
          { ...office, occupancyGroup },
          'no',
          { clause: 'a', on },
        ] as const,
    ),
    [
      'I-4 without sprinklers, second delay',
      { ...office, occupancyGroup: 'I-4', sprinklered: false, sprinklerKind: 'nfpa13' },
      'yes',
      { clause: 'a', on },
    ],
    ['NFPA 101 alone', office, 'no', { clause: 'a', on, basis: nfpaOnly }],
    ['both codes adopted', office, 'yes', { clause: 'a', on, basis: bothCodes }],
    [
      'other doors not counted',
      { egressRole: 'stairEntry', occupancyGroup: 'B', sprinklered: true, sprinklerKind: 'nfpa13' },
      'unknown',
      { clause: 'a', on },
    ],
    ...onEach(['delayedMagnet/safe/delayed'], 'second delay at an office stair', office, 'yes', 'a'),
    ['a free bar', office, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    [
      'hospital, second delay',
      { ...office, occupancyGroup: 'I-2' },
      'yes',
      { clause: 'b', on, does: 'signOff must' },
    ],
    [
      'detention, second delay',
      { ...office, occupancyGroup: 'I-3', sprinklered: false, sprinklerKind: 'nfpa13' },
      'yes',
      { clause: 'b', on },
    ],
    ...care.map(
      (occupancyGroup) =>
        [
          `${occupancyGroup} with sprinklers, second delay`,
          { ...office, occupancyGroup },
          'yes',
          { clause: 'b', on },
        ] as const,
    ),
    [
      'I-4 without sprinklers',
      { ...office, occupancyGroup: 'I-4', sprinklered: false, sprinklerKind: 'nfpa13' },
      'no',
      { clause: 'b', on },
    ],
    ['office', office, 'no', { clause: 'b', on }],
    [
      'hospital, only delay',
      { ...office, occupancyGroup: 'I-2', delayedDoorsOnPath: 0 },
      'no',
      { clause: 'b', on },
    ],
    [
      'hospital, third delay is refused',
      { ...office, occupancyGroup: 'I-2', delayedDoorsOnPath: 2 },
      'no',
      { clause: 'b', on },
    ],
    [
      'hospital, not at a stair',
      { ...office, occupancyGroup: 'I-2', egressRole: 'exitAccess' },
      'no',
      { clause: 'b', on },
    ],
    [
      'hospital, NFPA 101 alone',
      { ...office, occupancyGroup: 'I-2' },
      'no',
      { clause: 'b', on, basis: nfpaOnly },
    ],
    [
      'group not known',
      { egressRole: 'stairEntry', delayedDoorsOnPath: 1, sprinklered: true, sprinklerKind: 'nfpa13' },
      'unknown',
      { clause: 'b', on },
    ],
    [
      'hospital, free bar',
      { ...office, occupancyGroup: 'I-2' },
      'no',
      { clause: 'b', on: 'exitTrim/secure/free' },
    ],
    [
      'second delay, NFPA 101 alone',
      office,
      'yes',
      { clause: 'c', on, basis: nfpaOnly, does: 'signOff must' },
    ],
    [
      'only delay, NFPA 101 alone',
      { ...office, delayedDoorsOnPath: 0 },
      'no',
      { clause: 'c', on, basis: nfpaOnly },
    ],
    [
      'not at a stair, NFPA 101 alone',
      { ...office, egressRole: 'exitAccess' },
      'no',
      { clause: 'c', on, basis: nfpaOnly },
    ],
    ['both codes adopted', office, 'no', { clause: 'c', on, basis: bothCodes }],
    ['no code chosen', office, 'no', { clause: 'c', on, basis: { ibc: null } }],
    [
      'other doors not counted',
      { egressRole: 'stairEntry' },
      'unknown',
      { clause: 'c', on, basis: nfpaOnly },
    ],
    ['a free bar', office, 'no', { clause: 'c', on: 'exitTrim/secure/free', basis: nfpaOnly }],
  ),
});
