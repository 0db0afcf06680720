import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const pair = {
  doorType: 'pair',
  roomUse: 'storage',
  occupancyGroup: 'S-1',
  inactiveBolts: 'manualFlush',
  fireRatingMin: 0,
  wallRatingMin: 0,
  inactiveHasHardware: false,
} as const;

export const R111Cases = cases(
  ['unrated storage pair', pair, 'yes', { clause: 'a', does: 'permit' }],
  ['unrated equipment pair', { ...pair, roomUse: 'equipment' }, 'yes', { clause: 'a' }],
  ['office pair', { ...pair, roomUse: 'office' }, 'no', { clause: 'a' }],
  [
    'closet on a hospital corridor, R-107',
    { ...pair, occupancyGroup: 'I-2', suiteDoor: 'none', wallKind: 'smokePartition' },
    'no',
    { clause: 'a' },
  ],
  [
    'closet elsewhere in a hospital',
    { ...pair, occupancyGroup: 'I-2', suiteDoor: 'none', wallKind: 'none' },
    'yes',
    { clause: 'a' },
  ],
  ...(
    [
      ['hospital corridor', 'I-2', 'none', 'corridor', 'no'],
      ['corridor of an office building', 'B', 'none', 'corridor', 'yes'],
      ['suite entrance of a hospital', 'I-2', 'perimeter', 'none', 'no'],
      ['inside a suite', 'I-2', 'inside', 'none', 'yes'],
      ['suite recorded in ambulatory care', 'B', 'perimeter', 'none', 'no'],
      ['inside a suite of ambulatory care', 'B', 'inside', 'none', 'yes'],
    ] as const
  ).map(
    ([name, occupancyGroup, suiteDoor, wallKind, expect]): CaseRow => [
      name,
      { ...pair, occupancyGroup, suiteDoor, wallKind },
      expect,
      { clause: 'a' },
    ],
  ),
  ['single leaf', { ...pair, doorType: 'single' }, 'no', { clause: 'a' }],
  ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush' }, 'no', { clause: 'a' }],
  ['rated pair', { ...pair, fireRatingMin: 45 }, 'no', { clause: 'a' }],
  ['dummy lever on the inactive leaf', { ...pair, inactiveHasHardware: true }, 'no', { clause: 'a' }],
  ['rating not known', without(pair, 'fireRatingMin'), 'unknown', { clause: 'a' }],
  [
    'dummy lever on the inactive leaf',
    { ...pair, inactiveHasHardware: true },
    'yes',
    { clause: 'b', does: 'modify locksmith' },
  ],
  [
    'dummy lever, equipment room',
    { ...pair, roomUse: 'equipment', inactiveHasHardware: true },
    'yes',
    { clause: 'b' },
  ],
  ['nothing on the inactive leaf', pair, 'no', { clause: 'b' }],
  ['office pair', { ...pair, roomUse: 'office', inactiveHasHardware: true }, 'no', { clause: 'b' }],
  ['single leaf', { ...pair, doorType: 'single', inactiveHasHardware: true }, 'no', { clause: 'b' }],
  [
    'automatic bolts',
    { ...pair, inactiveBolts: 'automaticFlush', inactiveHasHardware: true },
    'no',
    { clause: 'b' },
  ],
  ['hardware not known', without(pair, 'inactiveHasHardware'), 'unknown', { clause: 'b' }],
);
