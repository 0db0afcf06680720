import { type CaseRow, cases } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-3',
  occupantLoad: 120,
  roomUse: 'other',
  readerSides: 'none',
} as const;

export const N08Cases = cases(
  [
    'roller latch of a hall',
    { ...hall, latch: 'roller' },
    'yes',
    { clause: 'd', on: 'noLock/none/free', does: 'prohibit' },
  ],
  ['push and pull at a hall', { ...hall, latch: 'pushPull' }, 'no', { clause: 'd', on: 'noLock/none/free' }],
  [
    'roller latch of a small room',
    { ...hall, latch: 'roller', occupantLoad: 20 },
    'no',
    { clause: 'd', on: 'noLock/none/free' },
  ],
  ['hall, latch not known', hall, 'unknown', { clause: 'd', on: 'noLock/none/free' }],
  ['bored latch', { latch: 'bored' }, 'yes', { clause: 'a', on: 'noLock/none/free', does: 'prohibit' }],
  ['push and pull', { latch: 'pushPull' }, 'no', { clause: 'a', on: 'noLock/none/free' }],
  ['roller latch', { latch: 'roller' }, 'no', { clause: 'a', on: 'noLock/none/free' }],
  ['latch not known', {}, 'unknown', { clause: 'a', on: 'noLock/none/free' }],
  ['a mechanical lock is a lock', { latch: 'bored' }, 'no', { clause: 'a', on: 'mechanicalLock/none/free' }],
  ['fire door', { fireRatingMin: 90 }, 'yes', { clause: 'b', on: 'noLock/none/free', does: 'prohibit' }],
  [
    'patient room',
    { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'patientRoom' },
    'yes',
    { clause: 'b', on: 'noLock/none/free' },
  ],
  [
    'suite entrance',
    { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office', suiteDoor: 'perimeter' },
    'yes',
    { clause: 'b', on: 'noLock/none/free' },
  ],
  [
    'inside a suite',
    { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office', suiteDoor: 'inside', occupancyGroup: 'B' },
    'no',
    { clause: 'b', on: 'noLock/none/free' },
  ],
  [
    'suite not asked, unrated office',
    { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office', occupancyGroup: 'B' },
    'no',
    { clause: 'b', on: 'noLock/none/free' },
  ],
  ...(['corridor', 'smokePartition'] as const).map(
    (wallKind): CaseRow => [
      'office on a hospital corridor',
      {
        fireRatingMin: 0,
        wallRatingMin: 0,
        roomUse: 'office',
        occupancyGroup: 'I-2',
        suiteDoor: 'none',
        wallKind,
      },
      'yes',
      { clause: 'b', on: 'noLock/none/free' },
    ],
  ),
  ...(
    [
      ['suite entrance of a hospital', 'I-2', 'perimeter', 'none', 'yes'],
      ['inside a suite of a hospital', 'I-2', 'inside', 'none', 'no'],
      ['corridor of an office building', 'B', 'none', 'corridor', 'no'],
    ] as const
  ).map(
    ([name, occupancyGroup, suiteDoor, wallKind, expect]): CaseRow => [
      name,
      { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office', occupancyGroup, suiteDoor, wallKind },
      expect,
      { clause: 'b', on: 'noLock/none/free' },
    ],
  ),
  ['rating not known', { roomUse: 'office' }, 'unknown', { clause: 'b', on: 'noLock/none/free' }],
  ['a mechanical lock latches', { fireRatingMin: 90 }, 'no', { clause: 'b', on: 'mechanicalLock/none/free' }],
  [
    'medium need',
    { securityNeed: 'medium' },
    'yes',
    { clause: 'c', on: 'noLock/none/free', does: 'caution' },
  ],
  ['low need', { securityNeed: 'low' }, 'no', { clause: 'c', on: 'noLock/none/free' }],
  ['need not known', {}, 'unknown', { clause: 'c', on: 'noLock/none/free' }],
  ['a lock is not meant', { securityNeed: 'high' }, 'no', { clause: 'c', on: 'mechanicalLock/none/free' }],
);
