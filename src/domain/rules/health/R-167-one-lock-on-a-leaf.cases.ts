import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const ward = { occupancyGroup: 'I-2', egressRole: 'exitAccess', lockFunction: 'storeroom' } as const;

const at = { on: 'magnet/safe/controlled', basis: { nfpa101: 2021 } } as const;

export const R167Cases = cases(
  ...onEach(
    [
      'magnet/safe/controlled',
      'boltMotor/safe/controlled',
      'delayedMagnet/safe/delayed',
      'magnet/safe/sensor',
      'magnet/safe/doorSwitch',
    ],
    'storeroom lock stays beside it',
    ward,
    'yes',
    { clause: 'a', does: ['passageFunction'] },
  ).map(([name, facts, expect, options]): CaseRow => [name, facts, expect, { ...options, basis: at.basis }]),
  ['bolt opened by staff', ward, 'no', { ...at, clause: 'a', on: 'boltMotor/safe/credentialOut' }],
  [
    'a lock that takes the place of the old one',
    ward,
    'no',
    { ...at, clause: 'a', on: 'mortiseLock/secure/clinical' },
  ],
  ...(['classroom', 'office'] as const).map(
    (lockFunction): CaseRow => [
      `${lockFunction} lock stays`,
      { ...ward, lockFunction },
      'yes',
      { ...at, clause: 'a' },
    ],
  ),
  ...(['passage', 'none'] as const).map(
    (lockFunction): CaseRow => [
      `${lockFunction} stays`,
      { ...ward, lockFunction },
      'no',
      { ...at, clause: 'a' },
    ],
  ),
  ['function not known', without(ward, 'lockFunction'), 'unknown', { ...at, clause: 'a' }],
  ['office building', { ...ward, occupancyGroup: 'B' }, 'no', { ...at, clause: 'a' }],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { ...at, clause: 'a' }],
  ['IBC alone, not federal', { ...ward, federalHealthCare: false }, 'no', { clause: 'a', on: at.on }],
  ['IBC alone, federally paid', { ...ward, federalHealthCare: true }, 'yes', { clause: 'a', on: at.on }],
);
