import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { bothCodes, nfpaOnly } from './given.ts';

const on = 'delayedExitDevice/safe/delayed';

const office = {
  egressRole: 'stairEntry',
  delayedDoorsOnPath: 1,
  occupancyGroup: 'B',
  sprinklered: true,
  sprinklerKind: 'nfpa13',
} as const;

const care = ['I-1.1', 'I-1.2', 'I-4'] as const;

export const R68Cases = cases(
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
  ['second delay, NFPA 101 alone', office, 'yes', { clause: 'c', on, basis: nfpaOnly, does: 'signOff must' }],
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
  ['other doors not counted', { egressRole: 'stairEntry' }, 'unknown', { clause: 'c', on, basis: nfpaOnly }],
  ['a free bar', office, 'no', { clause: 'c', on: 'exitTrim/secure/free', basis: nfpaOnly }],
);
