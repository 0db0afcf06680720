import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'mechanicalLock/none/free';

const toilet = {
  latch: 'pushPull',
  readerSides: 'none',
  workStatus: 'existing',
  securityNeed: 'medium',
  wishKeyLock: false,
  wishLockdown: false,
  fireRatingMin: 0,
  wallRatingMin: 0,
  roomUse: 'multiToilet',
  occupancyGroup: 'B',
} as const;

export const N10Cases = cases(
  ['toilets in use', toilet, 'yes', { on, does: 'prohibit' }],
  ['roller latch, being altered', { ...toilet, latch: 'roller', workStatus: 'altered' }, 'yes', { on }],
  ['low need, battery lock', { ...toilet, securityNeed: 'low' }, 'yes', { on: 'batteryLock/asIs/free' }],
  ['no lock at all', toilet, 'no', { on: 'noLock/none/free' }],
  ['reader wanted', { ...toilet, readerSides: 'secure' }, 'no', { on }],
  [
    'sealed off, the usual reader',
    { ...toilet, readerSides: 'secure', egressRole: 'sealedOff' },
    'yes',
    { on },
  ],
  ['new opening', { ...toilet, workStatus: 'new' }, 'no', { on }],
  ['latch there', { ...toilet, latch: 'bored' }, 'no', { on }],
  ...(['high', 'critical'] as const).map(
    (securityNeed): CaseRow => ['much is at stake', { ...toilet, securityNeed }, 'no', { on }],
  ),
  ['key lock wanted', { ...toilet, wishKeyLock: true }, 'no', { on }],
  ['lockdown wanted', { ...toilet, wishLockdown: true }, 'no', { on }],
  ['fire door', { ...toilet, fireRatingMin: 20 }, 'no', { on }],
  ['patient room', { ...toilet, roomUse: 'patientRoom' }, 'no', { on }],
  ['suite entrance', { ...toilet, suiteDoor: 'perimeter' }, 'no', { on }],
  [
    'office on a hospital corridor',
    { ...toilet, occupancyGroup: 'I-2', wallKind: 'smokePartition' },
    'no',
    { on },
  ],
  ...(
    [
      ['suite entrance of a hospital', 'I-2', 'perimeter', 'none', 'no'],
      ['inside a suite of a hospital', 'I-2', 'inside', 'none', 'yes'],
      ['hospital corridor', 'I-2', 'none', 'corridor', 'no'],
      ['corridor of an office building', 'B', 'none', 'corridor', 'yes'],
    ] as const
  ).map(
    ([name, occupancyGroup, suiteDoor, wallKind, expect]): CaseRow => [
      name,
      { ...toilet, occupancyGroup, suiteDoor, wallKind },
      expect,
      { on },
    ],
  ),
  ['exit with a reader', { ...toilet, readerSides: 'secure', egressRole: 'exteriorExit' }, 'no', { on }],
  ['inside a suite', { ...toilet, suiteDoor: 'inside' }, 'yes', { on }],
  ['lockdown not asked', without(toilet, 'wishLockdown'), 'unknown', { on }],
);
