import { cases, type CaseRow } from '../rule.ts';
import {
  behindBar,
  devicesOf,
  heldByBarOrSensor,
  inEach,
  keyInsideMeant,
  latchNeedsBarMeant,
  lockWithoutBarMeant,
} from './panicCases.ts';

const room = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'H-2',
  occupantLoad: 1,
} as const;

const lever = { latch: 'bored', panicPresent: false } as const;

const bar = { latch: 'rimExit', panicPresent: true } as const;

const unrated = { fireRatingMin: 0, wallRatingMin: 0 } as const;

const spaceRows: readonly CaseRow[] = [
  ...(['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const).map(
    (occupancyGroup): CaseRow => [`group ${occupancyGroup}, one person`, { ...room, occupancyGroup }, 'yes'],
  ),
  ['ordinary factory', { ...room, occupancyGroup: 'F-1' }, 'no'],
  ['sealed off', { ...room, egressRole: 'sealedOff' }, 'no'],
  ['sliding door', { ...room, doorType: 'slidingManual' }, 'no'],
  ['IBC not adopted', room, 'no', { basis: { ibc: null } }],
  ['group not known', { egressRole: 'exitAccess', doorType: 'single' }, 'unknown'],
];

const latchRows: readonly CaseRow[] = [
  [
    'push/pull leaf that gets this lock, no reader wanted',
    { ...room, panicPresent: false, latch: 'pushPull', readerSides: 'none' },
    'yes',
  ],
  [
    'push/pull leaf that gets a reader',
    { ...room, panicPresent: false, latch: 'pushPull', readerSides: 'secure' },
    'yes',
  ],
];

const office = { egressRole: 'exitAccess', occupancyGroup: 'B', planHighHazardLeaves: true } as const;

const passingRows: readonly CaseRow[] = [
  ['office through which a hazardous room leaves', office, 'yes'],
  ['office by itself', { egressRole: 'exitAccess', occupancyGroup: 'B' }, 'no'],
  ['itself high hazard: the whole opening is reviewed already', { ...office, occupancyGroup: 'H-3' }, 'no'],
  ['sealed off', { ...office, egressRole: 'sealedOff' }, 'no'],
  ['group not known', { egressRole: 'exitAccess', planHighHazardLeaves: true }, 'unknown'],
];

export const R70Cases = cases(
  [
    'pushed and pulled',
    { ...room, latch: 'pushPull', panicPresent: false },
    'no',
    { clause: 'a', on: 'noLock/none/free' },
  ],
  [
    'pushed and pulled, rated',
    { ...room, latch: 'pushPull', panicPresent: false, fireRatingMin: 45 },
    'no',
    { clause: 'b', on: 'noLock/none/free' },
  ],
  ...inEach([{ clause: 'a', on: 'exitTrim/secure/free', facts: lever }], [...spaceRows, ...latchRows]),
  ['bar already there', { ...room, ...bar }, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['bar or not: not known', room, 'unknown', { clause: 'a', on: 'exitTrim/secure/free' }],
  [
    'a rated door needs it as well',
    { ...room, ...lever, fireRatingMin: 45 },
    'yes',
    { clause: 'a', on: 'exitTrim/secure/free', does: ['panicHardware'] },
  ],
  ['rating not known', { ...room, ...lever }, 'unknown', { clause: 'b', on: 'exitTrim/secure/free' }],
  [
    'bar or not: not known',
    { ...room, fireRatingMin: 45 },
    'unknown',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  ...inEach(
    [
      {
        clause: 'b',
        on: 'exitTrim/secure/free',
        facts: { ...lever, fireRatingMin: 45 },
        does: ['fireExitHardware'],
      },
    ],
    [...spaceRows, ...latchRows],
  ),
  [
    'bar already there',
    { ...room, ...bar, fireRatingMin: 45 },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  [
    'unrated door is clause a',
    { ...room, ...lever, ...unrated },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  ...inEach([{ clause: 'c', on: 'mortiseLock/secure/free', does: 'prohibit' }], spaceRows),
  ...devicesOf(
    'c',
    { ...room, ...bar },
    [...lockWithoutBarMeant, ...heldByBarOrSensor],
    [...behindBar, ...latchNeedsBarMeant, ...keyInsideMeant],
  ),
  ...inEach([{ clause: 'd', on: 'strikeMortise/secure/free', facts: lever, does: 'prohibit' }], spaceRows),
  ['bar on the leaf', { ...room, ...bar }, 'no', { clause: 'd', on: 'strikeMortise/secure/free' }],
  ...devicesOf('d', { ...room, ...lever }, latchNeedsBarMeant, [
    ...behindBar,
    'magnet/safe/sensor',
    'mortiseLock/secure/free',
    'mechanicalLock/none/keyInside',
  ]),
  ...inEach([{ clause: 'e', on: 'mechanicalLock/none/keyInside', does: 'prohibit' }], spaceRows),
  ...devicesOf('e', room, keyInsideMeant, ['mechanicalLock/none/free', 'exitTrim/secure/free']),
  ...(['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const).map(
    (occupancyGroup): CaseRow => [
      `group ${occupancyGroup}`,
      { ...room, occupancyGroup },
      'yes',
      { clause: 'f', does: 'signOff must' },
    ],
  ),
  ['sliding door', { ...room, doorType: 'slidingManual' }, 'yes', { clause: 'f' }],
  ['NFPA 101 alone', room, 'yes', { clause: 'f', basis: { ibc: null, nfpa101: 2021 } }],
  ['ordinary factory', { ...room, occupancyGroup: 'F-1' }, 'no', { clause: 'f' }],
  ['sealed off', { ...room, egressRole: 'sealedOff' }, 'no', { clause: 'f' }],
  ['group not known', { egressRole: 'exitAccess' }, 'unknown', { clause: 'f' }],
  ...inEach([{ clause: 'g', does: 'signOff must' }], passingRows),
);
