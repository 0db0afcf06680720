import { cases, type CaseRow } from '../rule.ts';
import {
  behindBar,
  besideALeverLockMeant,
  devicesOf,
  heldByBarOrSensor,
  inEach,
  keyInsideMeant,
  latchNeedsBarMeant,
  lockWithoutBarMeant,
  oneOfEachLock,
} from './panicCases.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-2',
  occupantLoad: 120,
} as const;

const lever = { latch: 'bored', panicPresent: false } as const;

const bar = { latch: 'rimExit', panicPresent: true } as const;

const unrated = { fireRatingMin: 0, wallRatingMin: 0 } as const;

const gate = {
  ...hall,
  doorType: 'gateSwing',
  egressRole: 'dischargeGate',
  occupancyGroup: 'A-5',
  safeDispersalArea: true,
  gateSupervised: true,
} as const;

const meeting = { ...hall, roomUse: 'conference', occupancyGroup: 'B' } as const;

/** What each clause is asked of. */
const atTrim = { clause: 'a', on: 'exitTrim/secure/free' } as const;

const atRatedTrim = { ...atTrim, clause: 'b' } as const;

const atStrike = { clause: 'd', on: 'strikeMortise/secure/free' } as const;

const atKeyLock = { clause: 'e', on: 'mechanicalLock/none/keyInside' } as const;

const atMagnet = { clause: 'i', on: 'magnet/safe/doorSwitch' } as const;

/** Both sides of every part of the duty. */
const spaceRows: readonly CaseRow[] = [
  ['hall for 50', { ...hall, occupantLoad: 50 }, 'yes'],
  ['hall for 49', { ...hall, occupantLoad: 49 }, 'no'],
  ...(['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'E'] as const).map(
    (occupancyGroup): CaseRow => [`group ${occupancyGroup}`, { ...hall, occupancyGroup }, 'yes'],
  ),
  ['office floor', { ...hall, occupancyGroup: 'B' }, 'no'],
  ['sealed off', { ...hall, egressRole: 'sealedOff' }, 'no'],
  ['sliding door', { ...hall, doorType: 'slidingAutomatic' }, 'no'],
  ['IBC not adopted', hall, 'no', { basis: { ibc: null } }],
  ['load not known', { egressRole: 'exitAccess', doorType: 'single', occupancyGroup: 'A-2' }, 'unknown'],
  ['role not known', { doorType: 'single', occupancyGroup: 'A-2', occupantLoad: 120 }, 'unknown'],
  ['watched stadium gate with dispersal area', gate, 'no'],
  ['the same at an arena', { ...gate, occupancyGroup: 'A-4' }, 'no'],
  ['theater yard has no such case', { ...gate, occupancyGroup: 'A-3' }, 'yes'],
  ['gate without dispersal area', { ...gate, safeDispersalArea: false }, 'yes'],
  ['gate that nobody watches', { ...gate, gateSupervised: false }, 'yes'],
  ['door of the stadium', { ...gate, doorType: 'single' }, 'yes'],
];

const latchRows: readonly CaseRow[] = [
  ['push/pull leaf, no lock wanted', { ...hall, latch: 'pushPull', readerSides: 'none' }, 'no'],
  ['push/pull leaf that gets a reader', { ...hall, latch: 'pushPull', readerSides: 'secure' }, 'yes'],
];

/** A lock on the leaf makes the bar due, whatever the leaf was before. */
const lockRows: readonly CaseRow[] = latchRows.map(([name, facts]) => [name, facts, 'yes']);

const trim = 'exitTrim/secure/free';

export const R69Cases = cases(
  ...inEach(
    [{ ...atTrim, facts: lever }],
    [
      ...spaceRows,
      ...lockRows.map(([name, facts, expect]): CaseRow => [name, { panicPresent: false, ...facts }, expect]),
    ],
  ),
  ['bar already there', { ...hall, ...bar }, 'no', atTrim],
  [
    'pushed and pulled',
    { ...hall, latch: 'pushPull', panicPresent: false },
    'no',
    { clause: 'a', on: 'noLock/none/free' },
  ],
  ['bar or not: not known', hall, 'unknown', atTrim],
  ['rating not known', { ...hall, ...lever }, 'unknown', atRatedTrim],
  ['bar or not: not known', { ...hall, fireRatingMin: 45 }, 'unknown', atRatedTrim],
  [
    'a rated door needs it as well',
    { ...hall, ...lever, fireRatingMin: 45 },
    'yes',
    { ...atTrim, does: ['panicHardware'] },
  ],
  ...devicesOf('a', { ...hall, ...lever }, oneOfEachLock, ['noLock/none/free', ...keyInsideMeant]),
  ...inEach(
    [{ ...atRatedTrim, facts: { ...lever, fireRatingMin: 45 }, does: ['fireExitHardware'] }],
    [
      ...spaceRows,
      ...lockRows.map(
        ([name, facts, expect]): CaseRow => [
          name,
          { ...facts, fireRatingMin: 45, panicPresent: false },
          expect,
        ],
      ),
    ],
  ),
  ['bar already there', { ...hall, ...bar, fireRatingMin: 45 }, 'no', atRatedTrim],
  ['unrated door is clause a', { ...hall, ...lever, ...unrated }, 'no', atRatedTrim],
  ...devicesOf('b', { ...hall, ...lever, fireRatingMin: 45 }, oneOfEachLock, [
    'noLock/none/free',
    ...keyInsideMeant,
  ]),
  ...inEach([{ clause: 'c', on: 'mortiseLock/secure/free', does: 'prohibit' }], spaceRows),
  ...devicesOf('c', { ...hall, ...bar }, lockWithoutBarMeant, [
    ...behindBar,
    ...heldByBarOrSensor,
    ...latchNeedsBarMeant,
    ...keyInsideMeant,
  ]),
  ...inEach([{ ...atStrike, facts: lever, does: 'prohibit' }], spaceRows),
  ['mortise exit device on the leaf', { ...hall, latch: 'mortise', panicPresent: true }, 'no', atStrike],
  ['push bar or not: not known', hall, 'unknown', atStrike],
  ...devicesOf('d', { ...hall, ...lever }, latchNeedsBarMeant, [
    ...behindBar,
    ...heldByBarOrSensor,
    'mortiseLock/secure/free',
    'mechanicalLock/none/keyInside',
  ]),
  ...inEach([{ ...atKeyLock, facts: { mainDoor: false } }], spaceRows),
  ['main door of a hall for 300', { ...hall, mainDoor: true, occupantLoad: 300 }, 'no', atKeyLock],
  [
    'main door of a hall for 301',
    { ...hall, mainDoor: true, occupantLoad: 301, placeOfWorship: false },
    'yes',
    { ...atKeyLock, does: 'prohibit' },
  ],
  [
    'main door of a church for 301',
    { ...hall, mainDoor: true, occupantLoad: 301, placeOfWorship: true },
    'no',
    atKeyLock,
  ],
  [
    'side door of a church',
    { ...hall, mainDoor: false, occupantLoad: 301, placeOfWorship: true },
    'yes',
    atKeyLock,
  ],
  ['main door of a school', { ...hall, mainDoor: true, occupancyGroup: 'E' }, 'yes', atKeyLock],
  [
    'restaurant terrace of 300, 2021',
    { ...hall, mainDoor: false, egressRole: 'exteriorSpace', occupantLoad: 300 },
    'no',
    atKeyLock,
  ],
  [
    'roof terrace of 300, 2021',
    { ...hall, mainDoor: false, egressRole: 'roofDoor', roofUse: 'occupied', occupantLoad: 300 },
    'no',
    atKeyLock,
  ],
  [
    'roof nobody uses',
    { ...hall, mainDoor: false, egressRole: 'roofDoor', roofUse: 'unoccupied' },
    'yes',
    atKeyLock,
  ],
  ['side door, roof used', { ...hall, mainDoor: false, roofUse: 'occupied' }, 'yes', atKeyLock],
  [
    'restaurant terrace of 301, 2021',
    { ...hall, mainDoor: false, egressRole: 'exteriorSpace', occupantLoad: 301 },
    'yes',
    atKeyLock,
  ],
  [
    'restaurant terrace, 2018',
    { ...hall, mainDoor: false, egressRole: 'exteriorSpace' },
    'yes',
    { ...atKeyLock, basis: { ibc: 2018 } },
  ],
  ...devicesOf('e', { ...hall, mainDoor: false }, keyInsideMeant, [
    'mechanicalLock/none/free',
    'exitTrim/secure/free',
  ]),
  ...inEach(
    [{ clause: 'f', on: trim, facts: lever, does: 'signOff note' }],
    spaceRows.map(
      ([name, facts, expect, options]): CaseRow => [
        name,
        facts.egressRole === 'exitAccess' ? { ...facts, egressRole: 'exteriorExit' } : facts,
        expect,
        options ?? {},
      ],
    ),
  ),
  ...inEach(
    [{ clause: 'f', on: trim, facts: { egressRole: 'exteriorExit' } }],
    latchRows.map(
      ([name, facts, expect]): CaseRow => [name, { ...facts, egressRole: 'exteriorExit' }, expect],
    ),
  ),
  ['the room door itself', { ...hall, ...lever }, 'no', { clause: 'f', on: trim }],
  [
    'the key lock that the main door may have in its place',
    { ...hall, ...lever, egressRole: 'exteriorExit', mainDoor: true },
    'no',
    { clause: 'f', on: 'mechanicalLock/none/keyInside' },
  ],
  ['stadium gate of 50', { ...gate, occupantLoad: 50 }, 'yes', { clause: 'g', does: 'signOff must' }],
  ['stadium gate of 49', { ...gate, occupantLoad: 49 }, 'no', { clause: 'g' }],
  ['arena gate', { ...gate, occupancyGroup: 'A-4' }, 'yes', { clause: 'g' }],
  ['theater gate', { ...gate, occupancyGroup: 'A-3' }, 'no', { clause: 'g' }],
  ['door of the stadium', { ...gate, doorType: 'single' }, 'no', { clause: 'g' }],
  ['no dispersal area', { ...gate, safeDispersalArea: false }, 'no', { clause: 'g' }],
  ['nobody watches', { ...gate, gateSupervised: false }, 'no', { clause: 'g' }],
  ['IBC not adopted', gate, 'no', { clause: 'g', basis: { ibc: null } }],
  [
    'watching not known',
    { doorType: 'gateSwing', occupancyGroup: 'A-5', safeDispersalArea: true, occupantLoad: 100 },
    'unknown',
    { clause: 'g' },
  ],
  [
    'meeting room of 50 entered as business',
    { ...meeting, occupantLoad: 50 },
    'yes',
    { clause: 'h', does: 'signOff must' },
  ],
  ...(['courtroom', 'classroom'] as const).flatMap((roomUse): readonly CaseRow[] => [
    [
      `${roomUse} of 50 entered as business`,
      { ...meeting, roomUse, occupantLoad: 50 },
      'yes',
      { clause: 'h' },
    ],
    [
      `${roomUse} of 49 entered as business`,
      { ...meeting, roomUse, occupantLoad: 49 },
      'no',
      { clause: 'h' },
    ],
  ]),
  ['meeting room of 49', { ...meeting, occupantLoad: 49 }, 'no', { clause: 'h' }],
  [
    'office of 60',
    { ...hall, roomUse: 'office', occupancyGroup: 'B', occupantLoad: 60 },
    'no',
    { clause: 'h' },
  ],
  ...(['A-3', 'E', 'H-2'] as const).map(
    (occupancyGroup): CaseRow => [
      `entered as ${occupancyGroup}`,
      { ...hall, roomUse: 'conference', occupancyGroup },
      'no',
      { clause: 'h' },
    ],
  ),
  ['sealed off', { ...meeting, egressRole: 'sealedOff' }, 'no', { clause: 'h' }],
  ['IBC not adopted', meeting, 'no', { clause: 'h', basis: { ibc: null } }],
  [
    'load not known',
    { egressRole: 'exitAccess', roomUse: 'conference', occupancyGroup: 'B' },
    'unknown',
    { clause: 'h' },
  ],
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
      { ...atMagnet, does: 'prohibit' },
    ],
  ),
  ['push and pull only', { ...hall, latch: 'pushPull', panicPresent: false }, 'no', atMagnet],
  ['bar on the leaf', { ...hall, latch: 'mortise', panicPresent: true }, 'no', atMagnet],
  ['latch not known', { ...hall, panicPresent: false }, 'unknown', atMagnet],
  ...inEach([{ ...atMagnet, facts: lever }], spaceRows),
  ...devicesOf('i', { ...hall, ...lever }, besideALeverLockMeant, [
    'mortiseLock/secure/free',
    'strikeRim/secure/free',
    'delayedExitDevice/safe/delayed',
  ]),
);
