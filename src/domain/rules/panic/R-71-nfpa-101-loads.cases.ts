import { cases, type CaseRow } from '../rule.ts';
import { onEach } from '../onEach.ts';
import {
  behindBar,
  besideALeverLockMeant,
  devicesOf,
  heldByBarOrSensor,
  inEach,
  keyInsideMeant,
  latchNeedsBarMeant,
  lockWithoutBarMeant,
} from './panicCases.ts';

const basis = { ibc: null, nfpa101: 2021 } as const;

const hall = {
  egressRole: 'exitAccess',
  occupancyGroup: 'A-3',
  roomUse: 'other',
  occupantLoad: 200,
} as const;

const hazard = { ...hall, occupancyGroup: 'H-2', occupantLoad: 6 } as const;

const lever = { latch: 'bored', panicPresent: false } as const;

const bar = { latch: 'rimExit', panicPresent: true } as const;

const unrated = { fireRatingMin: 0, wallRatingMin: 0 } as const;

const spaceRows: readonly CaseRow[] = [
  ['hall for 100', { ...hall, occupantLoad: 100 }, 'yes'],
  ['hall for 99', { ...hall, occupantLoad: 99 }, 'no'],
  ...(['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'E', 'I-4'] as const).map(
    (occupancyGroup): CaseRow => [`group ${occupancyGroup}`, { ...hall, occupancyGroup }, 'yes'],
  ),
  ['day-care room in a church house', { ...hall, occupancyGroup: 'B', roomUse: 'dayCare' }, 'yes'],
  ['office floor', { ...hall, occupancyGroup: 'B' }, 'no'],
  ...(['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const).map(
    (occupancyGroup): CaseRow => [`${occupancyGroup} for 6`, { ...hazard, occupancyGroup }, 'yes'],
  ),
  ['high hazard for 5', { ...hazard, occupantLoad: 5 }, 'no'],
  ['sealed off', { ...hall, egressRole: 'sealedOff' }, 'no'],
  ['NFPA 101 not adopted', hall, 'no', { basis: { ibc: 2021, nfpa101: null } }],
  ['load not known', { egressRole: 'exitAccess', occupancyGroup: 'A-3' }, 'unknown'],
];

const latchRows: readonly CaseRow[] = [
  [
    'push/pull leaf that gets this lock, no reader wanted',
    { ...hall, panicPresent: false, latch: 'pushPull', readerSides: 'none' },
    'yes',
  ],
  [
    'push/pull leaf that gets a reader',
    { ...hall, panicPresent: false, latch: 'pushPull', readerSides: 'secure' },
    'yes',
  ],
];

export const R71Cases = cases(
  ...inEach([{ clause: 'a', on: 'exitTrim/secure/free', basis, facts: lever }], [...spaceRows, ...latchRows]),
  ['bar already there', { ...hall, ...bar }, 'no', { clause: 'a', on: 'exitTrim/secure/free', basis }],
  ...onEach(
    ['noLock/none/free'],
    'pushed and pulled',
    { ...hall, latch: 'pushPull', panicPresent: false },
    'no',
    'a',
  ),
  ...onEach(
    ['magnet/safe/doorSwitch', 'boltSolenoid/safe/sensor', 'mechanicalLock/none/free'],
    'lock without a reader',
    { ...hall, latch: 'pushPull', readerSides: 'none', panicPresent: false },
    'yes',
    'a',
  ).map((row): CaseRow => [row[0], row[1], row[2], { ...row[3], basis }]),
  ['bar or not: not known', hall, 'unknown', { clause: 'a', on: 'exitTrim/secure/free', basis }],
  ['rating not known', { ...hall, ...lever }, 'unknown', { clause: 'b', on: 'exitTrim/secure/free', basis }],
  [
    'bar or not: not known',
    { ...hall, fireRatingMin: 45 },
    'unknown',
    { clause: 'b', on: 'exitTrim/secure/free', basis },
  ],
  [
    'a rated door needs it as well',
    { ...hall, ...lever, fireRatingMin: 45 },
    'yes',
    { clause: 'a', on: 'exitTrim/secure/free', basis, does: ['panicHardware'] },
  ],
  ...devicesOf(
    'a',
    { ...hall, ...lever },
    ['magnet/safe/doorSwitch', 'strikeRim/secure/free'],
    keyInsideMeant,
    basis,
  ),
  ...inEach(
    [
      {
        clause: 'b',
        on: 'exitTrim/secure/free',
        basis,
        facts: { ...lever, fireRatingMin: 45 },
        does: ['fireExitHardware'],
      },
    ],
    [...spaceRows, ...latchRows],
  ),
  [
    'bar already there',
    { ...hall, ...bar, fireRatingMin: 45 },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free', basis },
  ],
  [
    'unrated door is clause a',
    { ...hall, ...lever, ...unrated },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free', basis },
  ],
  ...devicesOf(
    'b',
    { ...hall, ...lever, fireRatingMin: 45 },
    ['magnet/safe/doorSwitch', 'strikeRim/secure/free'],
    keyInsideMeant,
    basis,
  ),
  ...inEach([{ clause: 'c', on: 'mortiseLock/secure/free', basis, does: 'prohibit' }], spaceRows),
  ...devicesOf(
    'c',
    { ...hall, ...bar },
    lockWithoutBarMeant,
    [...behindBar, ...heldByBarOrSensor, ...latchNeedsBarMeant, ...keyInsideMeant],
    basis,
  ),
  ...inEach(
    [{ clause: 'd', on: 'strikeMortise/secure/free', basis, facts: lever, does: 'prohibit' }],
    spaceRows,
  ),
  ['bar on the leaf', { ...hall, ...bar }, 'no', { clause: 'd', on: 'strikeMortise/secure/free', basis }],
  ...devicesOf(
    'd',
    { ...hall, ...lever },
    latchNeedsBarMeant,
    [...behindBar, ...heldByBarOrSensor, 'mortiseLock/secure/free', 'mechanicalLock/none/keyInside'],
    basis,
  ),
  ...inEach(
    [{ clause: 'e', on: 'mechanicalLock/none/keyInside', basis, facts: { mainDoor: false } }],
    spaceRows,
  ),
  [
    'main entrance of a hall for 500',
    { ...hall, mainDoor: true, occupantLoad: 500 },
    'no',
    { clause: 'e', on: 'mechanicalLock/none/keyInside', basis },
  ],
  [
    'main entrance of a hall for 501',
    { ...hall, mainDoor: true, occupantLoad: 501 },
    'yes',
    { clause: 'e', on: 'mechanicalLock/none/keyInside', basis, does: 'prohibit' },
  ],
  [
    'main entrance of a school',
    { ...hall, mainDoor: true, occupancyGroup: 'E' },
    'yes',
    { clause: 'e', on: 'mechanicalLock/none/keyInside', basis },
  ],
  [
    'main door of a house with day care',
    { ...hall, mainDoor: true, occupancyGroup: 'B', roomUse: 'dayCare' },
    'yes',
    { clause: 'e', on: 'mechanicalLock/none/keyInside', basis },
  ],
  ...devicesOf(
    'e',
    { ...hall, mainDoor: false },
    keyInsideMeant,
    ['mechanicalLock/none/free', 'exitTrim/secure/free'],
    basis,
  ),
  ...(
    [
      'bored',
      'mortise',
      'mortiseDeadbolt',
      'boredPlusDeadbolt',
      'deadboltOnly',
      'deadlatch',
      'hookbolt',
      'gateLock',
      'patch',
    ] as const
  ).map(
    (latch): CaseRow => [
      `${latch} on the leaf`,
      { ...hall, latch, panicPresent: false },
      'yes',
      { clause: 'f', on: 'magnet/safe/doorSwitch', basis, does: 'prohibit' },
    ],
  ),
  [
    'push and pull only',
    { ...hall, latch: 'pushPull', panicPresent: false },
    'no',
    { clause: 'f', on: 'magnet/safe/doorSwitch', basis },
  ],
  [
    'bar on the leaf',
    { ...hall, latch: 'mortise', panicPresent: true },
    'no',
    { clause: 'f', on: 'magnet/safe/doorSwitch', basis },
  ],
  [
    'latch not known',
    { ...hall, panicPresent: false },
    'unknown',
    { clause: 'f', on: 'magnet/safe/doorSwitch', basis },
  ],
  ...inEach([{ clause: 'f', on: 'magnet/safe/doorSwitch', basis, facts: lever }], spaceRows),
  ...devicesOf(
    'f',
    { ...hall, ...lever },
    besideALeverLockMeant,
    ['mortiseLock/secure/free', 'strikeRim/secure/free', 'delayedExitDevice/safe/delayed'],
    basis,
  ),
);
