import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';
import { found, bolts } from './R-73-no-second-lock-beside-panic-hardware.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-3',
  occupantLoad: 120,
  roomUse: 'other',
} as const;

const office = { ...hall, occupancyGroup: 'B' } as const;

const plain = { latch: 'rimExit', existingArrangement: 'freeBar' } as const;

const bar = 'exitTrim/secure/free';

export const R73Cases = cases(
  ...found.flatMap((existingArrangement): readonly CaseRow[] => [
    [
      `${existingArrangement} in a hall`,
      { ...hall, ...plain, existingArrangement },
      'yes',
      { clause: 'a', does: 'warn existingArrangement' },
    ],
    [
      `${existingArrangement} in a hall`,
      { ...hall, ...plain, existingArrangement },
      'yes',
      { clause: 'b', on: bar, does: 'modify locksmith' },
    ],
  ]),
  ...bolts.flatMap((latch): readonly CaseRow[] => [
    [`${latch} in a hall`, { ...hall, ...plain, latch }, 'yes', { clause: 'b', on: bar }],
    [
      `${latch} in a hall`,
      { ...hall, latch },
      'yes',
      { clause: 'c', on: 'magnet/safe/doorSwitch', does: 'prohibit' },
    ],
  ]),
  [
    'the key lock that the main door may have in its place',
    { ...hall, latch: 'hookbolt' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  ...onEach(
    [
      'strikeRim/secure/free',
      'magnet/safe/doorSwitch',
      'boltMotor/safe/doorSwitch',
      'mortiseLock/secure/free',
      'delayedExitDevice/safe/delayed',
      'batteryLock/asIs/free',
      'mechanicalLock/none/free',
      'detentionLock/none/attended',
    ],
    'a deadbolt in a hall, whichever lock comes',
    { ...hall, latch: 'deadboltOnly' },
    'yes',
    'b',
  ),
  ['no lock comes', { ...hall, latch: 'deadboltOnly' }, 'no', { clause: 'b', on: 'noLock/none/free' }],
  ['bar alone', { ...hall, ...plain }, 'no', { clause: 'a' }],
  ['bar alone', { ...hall, ...plain }, 'no', { clause: 'b', on: bar }],
  ['bar alone', { ...hall, ...plain }, 'no', { clause: 'c', on: 'magnet/safe/doorSwitch' }],
  [
    'office with a chain is R-08',
    { ...office, ...plain, existingArrangement: 'padlock' },
    'no',
    { clause: 'a' },
  ],
  [
    'office with a deadbolt is R-08',
    { ...office, ...plain, latch: 'boredPlusDeadbolt' },
    'no',
    { clause: 'b', on: bar },
  ],
  [
    'office with a deadbolt is R-08',
    { ...office, latch: 'boredPlusDeadbolt' },
    'no',
    { clause: 'c', on: 'magnet/safe/doorSwitch' },
  ],
  ['not surveyed', hall, 'unknown', { clause: 'a' }],
  ['not surveyed', hall, 'unknown', { clause: 'b', on: bar }],
  ['not surveyed', hall, 'unknown', { clause: 'c', on: 'magnet/safe/doorSwitch' }],
  [
    'strike beside a deadbolt',
    { ...hall, latch: 'mortiseDeadbolt' },
    'yes',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  [
    'a new device replaces the lock',
    { ...hall, latch: 'mortiseDeadbolt' },
    'no',
    { clause: 'c', on: 'exitTrim/secure/free' },
  ],
);
