import { under } from '../../codes/sections.ts';
import { lockWithoutBarOnLeaf } from '../../arrangement/leafLocks.ts';
import { all, any, atLeast, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { panicSpaces, panicTriggers } from '../../logic/derived.ts';
import { assemblyMainDoorIbc, exteriorSpaceKeyLock } from '../foundations/keyLocks.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';
import {
  behindBar,
  besideALeverLock,
  besideALeverLockMeant,
  devicesOf,
  heldByBarOrSensor,
  inEach,
  keyInside,
  keyInsideMeant,
  latchNeedsBar,
  latchNeedsBarMeant,
  lockWithoutBar,
  lockWithoutBarMeant,
  notKeyInside,
} from './panicCases.ts';

const space = panicSpaces.ibcAssemblyOrEducation;
const trigger = panicTriggers.ibcAssemblyOrEducation;

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

export const R69 = defineRule({
  id: 'R-69',
  title: 'Panic hardware for assembly and educational spaces of 50 or more',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('locksAndLatches'), under('hardwareRelease'), under('gates')],
  confidence: 'read',
  note: 'That courtrooms and lecture halls are listed under Group A-3 is from general knowledge; a classroom beyond the twelfth grade may be business, so it is signed for and not decided. How far along the path the duty runs is disputed; here every door in the path carries it. A lock added to a push/pull leaf counts as a lock. Stadium gates: see R-142.',
  why: 'A crowd pressing on a door must open it with its weight; a lever behind a crush cannot be turned.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['panicHardware'],
      when: all(space, no('hasExitDevice')),
      of: notKeyInside,
      says: 'This door serves {occupantLoad} in an assembly or educational space, so it needs panic hardware.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['fireExitHardware'],
      when: all(space, no('hasExitDevice'), yes('fireRated')),
      of: notKeyInside,
      says: 'It is also a fire door, so its panic hardware carries the fire exit hardware label.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: space,
      of: lockWithoutBar,
      says: 'The door serves {occupantLoad} in an assembly or educational space; only panic hardware may latch or lock it, and this device is not operated by a bar.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'The door serves {occupantLoad} in an assembly or educational space and has no push bar; a lever latch is not enough for a crowd.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(space, not(any(assemblyMainDoorIbc, exteriorSpaceKeyLock))),
      of: keyInside,
      says: 'A key lock may replace panic hardware only at the main door of a small assembly space, or toward a terrace whose egress leads back inside; this door is neither.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'note',
      when: all(trigger, not(is('egressRole', 'exitAccess'))),
      says: 'Panic hardware is required here as on every door along the path; some authorities stop at the room door, and only a reviewer may relax it.',
    },
    {
      key: 'g',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        is('doorType', 'gateSwing'),
        is('occupancyGroup', 'A-4', 'A-5'),
        yes('safeDispersalArea'),
        yes('gateSupervised'),
        atLeast('occupantLoad', 'panicLoadIbc'),
      ),
      says: 'This stadium gate goes without panic hardware only because it is under constant supervision and there is a safe dispersal area inside the fence; a reviewer confirms both.',
    },
    {
      key: 'h',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        yes('isEgress'),
        is('roomUse', 'conference', 'courtroom', 'classroom'),
        not(any(yes('groupA'), yes('groupE'), yes('groupH'))),
        atLeast('occupantLoad', 'panicLoadIbc'),
      ),
      says: 'A meeting room, courtroom or lecture room for {occupantLoad} is an assembly space by its use, though another group is entered; check the group, because panic hardware depends on it.',
    },
    {
      key: 'i',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice'), lockWithoutBarOnLeaf),
      of: besideALeverLock,
      says: 'The lever lock or bolt would stay on a door for a crowd, and only a push bar may latch it; install the bar first, then use a strike, trim or latch retraction at the bar.',
    },
  ],
  cases: cases(
    ...inEach(
      [{ ...atTrim, facts: lever }],
      [
        ...spaceRows,
        ...lockRows.map(
          ([name, facts, expect]): CaseRow => [name, { panicPresent: false, ...facts }, expect],
        ),
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
    ...devicesOf(
      'a',
      { ...hall, ...lever },
      ['magnet/safe/doorSwitch', 'strikeRim/secure/free'],
      keyInsideMeant,
    ),
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
    ...devicesOf(
      'b',
      { ...hall, ...lever, fireRatingMin: 45 },
      ['magnet/safe/doorSwitch', 'strikeRim/secure/free'],
      keyInsideMeant,
    ),
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
      [{ clause: 'f', facts: lever, does: 'signOff note' }],
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
      [{ clause: 'f', facts: { egressRole: 'exteriorExit' } }],
      latchRows.map(
        ([name, facts, expect]): CaseRow => [name, { ...facts, egressRole: 'exteriorExit' }, expect],
      ),
    ),
    ['the room door itself', { ...hall, ...lever }, 'no', { clause: 'f' }],
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
  ),
});
