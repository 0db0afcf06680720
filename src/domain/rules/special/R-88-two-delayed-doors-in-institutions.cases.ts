import { cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'delayedExitDevice/safe/delayed';

const free = 'exitTrim/secure/free';

const hospital = { occupancyGroup: 'I-2', delayedDoorsOnPath: 1, wishDelay30s: false } as const;

const home = {
  occupancyGroup: 'I-1.1',
  delayedDoorsOnPath: 1,
  sprinklered: false,
  sprinklerKind: 'nfpa13',
} as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R88Cases = cases(
  ['hospital, second delayed door', hospital, 'yes', { clause: 'a', on, does: 'permit' }],
  ['prison, second delayed door', { ...hospital, occupancyGroup: 'I-3' }, 'yes', { clause: 'a', on }],
  ['assisted living is not read', { ...hospital, occupancyGroup: 'I-1.2' }, 'no', { clause: 'a', on }],
  ['the only clause', { ...hospital, delayedDoorsOnPath: 0 }, 'no', { clause: 'a', on }],
  ['the third', { ...hospital, delayedDoorsOnPath: 2 }, 'no', { clause: 'a', on }],
  ['number not known', { occupancyGroup: 'I-2' }, 'unknown', { clause: 'a', on }],
  ['NFPA 101 alone', hospital, 'no', { clause: 'a', on, basis: alone }],
  ['both books', hospital, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  ['no book', hospital, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['a free bar', hospital, 'no', { clause: 'a', on: free }],
  ['hospital, second delayed door', hospital, 'yes', { clause: 'b', on, does: 'signOff must' }],
  ['office', { ...hospital, occupancyGroup: 'B' }, 'no', { clause: 'b', on }],
  ['the only clause', { ...hospital, delayedDoorsOnPath: 0 }, 'no', { clause: 'b', on }],
  ['number not known', { occupancyGroup: 'I-2' }, 'unknown', { clause: 'b', on }],
  ['NFPA 101 alone', hospital, 'no', { clause: 'b', on, basis: alone }],
  ['both books', hospital, 'yes', { clause: 'b', on, basis: { nfpa101: 2021 } }],
  ['no book', hospital, 'yes', { clause: 'b', on, basis: { ibc: null } }],
  ['a free bar', hospital, 'no', { clause: 'b', on: free }],
  [
    'hospital, third delayed door',
    { ...hospital, delayedDoorsOnPath: 2 },
    'yes',
    { clause: 'c', on, does: 'prohibit' },
  ],
  ['hospital, second delayed door', hospital, 'no', { clause: 'c', on }],
  ['office', { ...hospital, occupancyGroup: 'B', delayedDoorsOnPath: 2 }, 'no', { clause: 'c', on }],
  ['number not known', { occupancyGroup: 'I-2' }, 'unknown', { clause: 'c', on }],
  ['NFPA 101 alone', { ...hospital, delayedDoorsOnPath: 2 }, 'no', { clause: 'c', on, basis: alone }],
  [
    'both books',
    { ...hospital, delayedDoorsOnPath: 2 },
    'yes',
    { clause: 'c', on, basis: { nfpa101: 2021 } },
  ],
  ['no book', { ...hospital, delayedDoorsOnPath: 2 }, 'yes', { clause: 'c', on, basis: { ibc: null } }],
  ['a free bar', { ...hospital, delayedDoorsOnPath: 2 }, 'no', { clause: 'c', on: free }],
  ['assisted living, no sprinklers', home, 'yes', { clause: 'd', on, does: 'prohibit' }],
  ['condition 2, no sprinklers', { ...home, occupancyGroup: 'I-1.2' }, 'yes', { clause: 'd', on }],
  ['day care, no sprinklers', { ...home, occupancyGroup: 'I-4' }, 'yes', { clause: 'd', on }],
  ['hospital', { ...home, occupancyGroup: 'I-2' }, 'no', { clause: 'd', on }],
  [
    'assisted living with sprinklers',
    { ...home, sprinklered: true, sprinklerKind: 'nfpa13' },
    'no',
    { clause: 'd', on },
  ],
  ['the only clause', { ...home, delayedDoorsOnPath: 0 }, 'no', { clause: 'd', on }],
  ['sprinklers not known', without(home, 'sprinklered'), 'unknown', { clause: 'd', on }],
  ['NFPA 101 alone', home, 'no', { clause: 'd', on, basis: alone }],
  ['both books', home, 'yes', { clause: 'd', on, basis: { nfpa101: 2021 } }],
  ['no book', home, 'yes', { clause: 'd', on, basis: { ibc: null } }],
  ['a free bar', home, 'no', { clause: 'd', on: free }],
  [
    'hospital, second door, 30 s wanted',
    { ...hospital, wishDelay30s: true },
    'yes',
    { clause: 'e', on, does: 'prohibit' },
  ],
  ['hospital, second door, 15 s', hospital, 'no', { clause: 'e', on }],
  [
    'hospital, only door, 30 s',
    { ...hospital, delayedDoorsOnPath: 0, wishDelay30s: true },
    'no',
    { clause: 'e', on },
  ],
  [
    'office, refused by R-87',
    { ...hospital, occupancyGroup: 'B', wishDelay30s: true },
    'no',
    { clause: 'e', on },
  ],
  ['length not known', without(hospital, 'wishDelay30s'), 'unknown', { clause: 'e', on }],
  ['NFPA 101 alone', { ...hospital, wishDelay30s: true }, 'no', { clause: 'e', on, basis: alone }],
  ['both books', { ...hospital, wishDelay30s: true }, 'yes', { clause: 'e', on, basis: { nfpa101: 2021 } }],
  ['no book', { ...hospital, wishDelay30s: true }, 'yes', { clause: 'e', on, basis: { ibc: null } }],
  ['a free bar', { ...hospital, wishDelay30s: true }, 'no', { clause: 'e', on: free }],
  ['hospital, second delayed door', hospital, 'yes', { clause: 'f', on, does: 'caution' }],
  ['prison, second delayed door', { ...hospital, occupancyGroup: 'I-3' }, 'yes', { clause: 'f', on }],
  [
    'assisted living, sprinklered',
    { ...home, sprinklered: true, sprinklerKind: 'nfpa13' },
    'yes',
    { clause: 'f', on },
  ],
  [
    'condition 2, sprinklered',
    { ...home, occupancyGroup: 'I-1.2', sprinklered: true, sprinklerKind: 'nfpa13' },
    'yes',
    { clause: 'f', on },
  ],
  [
    'day care, sprinklered',
    { ...home, occupancyGroup: 'I-4', sprinklered: true, sprinklerKind: 'nfpa13' },
    'yes',
    { clause: 'f', on },
  ],
  ['assisted living, no sprinklers', home, 'no', { clause: 'f', on }],
  [
    'office, sprinklered',
    { ...home, occupancyGroup: 'B', sprinklered: true, sprinklerKind: 'nfpa13' },
    'no',
    { clause: 'f', on },
  ],
  ['the only clause', { ...hospital, delayedDoorsOnPath: 0 }, 'no', { clause: 'f', on }],
  ['number not known', { occupancyGroup: 'I-2' }, 'unknown', { clause: 'f', on }],
  ['NFPA 101 alone', hospital, 'no', { clause: 'f', on, basis: alone }],
  ['both books', hospital, 'yes', { clause: 'f', on, basis: { nfpa101: 2021 } }],
  ['no book', hospital, 'yes', { clause: 'f', on, basis: { ibc: null } }],
  ['a free bar', hospital, 'no', { clause: 'f', on: free }],
);
