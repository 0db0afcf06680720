import type { FactValues } from '../../model/fields.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';
import { without } from '../without.ts';

const office = {
  egressRole: 'exteriorExit',
  doorType: 'single',
  occupancyGroup: 'B',
  roomUse: 'office',
  occupantLoad: 20,
  latch: 'rimExit',
} as const;

const around = (clause: string, facts: CaseRow[1], on?: string): readonly CaseRow[] => {
  const at = on === undefined ? { clause } : { clause, on };
  return [
    ['bar not needed', { ...office, ...facts }, 'yes', at],
    ['bar needed', { ...office, ...facts, occupancyGroup: 'A-3', occupantLoad: 50 }, 'no', at],
    ['no bar', { ...office, ...facts, latch: 'bored', panicPresent: false }, 'no', at],
    ['cabinet', { ...office, ...facts, egressRole: 'noOccupiedSpace' }, 'no', at],
    [
      'latch not known',
      {
        egressRole: 'exteriorExit',
        doorType: 'single',
        occupancyGroup: 'B',
        roomUse: 'office',
        occupantLoad: 20,
        ...facts,
      },
      'unknown',
      at,
    ],
  ];
};

const lever = { ...office, latch: 'bored', panicPresent: false } as const;

const hall = { ...lever, occupancyGroup: 'A-3', roomUse: 'conference', occupantLoad: 49 } as const;

const floor = { ...lever, occupantLoad: 50 } as const;

const cold = { ...lever, roomUse: 'refrigerationMachinery', roomAreaFt2: 2000 } as const;

const switchgear = {
  ...lever,
  roomUse: 'electricalRoom',
  equipmentAmps: 400,
  equipmentVolts: 480,
  equipmentWidthFt: 3,
  overcurrentDevices: true,
  doorToWorkingSpaceFt: 10,
} as const;

/** What ends each of the four sentences. */
const noBar = (clause: string, facts: FactValues, basis = {}): readonly CaseRow[] => [
  ['no bar', facts, 'yes', { clause, basis, does: 'permit' }],
  ['bar there', { ...facts, latch: 'rimExit', panicPresent: true }, 'no', { clause, basis }],
  ['sliding leaf', { ...facts, doorType: 'slidingManual' }, 'no', { clause, basis }],
  ['cabinet', { ...facts, egressRole: 'noOccupiedSpace' }, 'no', { clause, basis }],
  ['high hazard', { ...facts, occupancyGroup: 'H-2' }, 'no', { clause, basis }],
  ['bar or not: not known', without(facts, 'panicPresent'), 'unknown', { clause, basis }],
];

export const R78Cases = cases(
  ...doing({ a: 'caution', b: 'signOff must' }, [
    ...around('a', {}),
    ...around('b', { mainDoor: true }, 'mechanicalLock/none/keyInside'),
    ['side door', { ...office, mainDoor: false }, 'no', { clause: 'b', on: 'mechanicalLock/none/keyInside' }],
    ...onEach(
      ['mechanicalLock/none/free', 'exitTrim/secure/free'],
      'no key',
      { ...office, mainDoor: true },
      'no',
      'b',
    ),
    ...around('c', { existingArrangement: 'padlock' }),
    ...around('c', { existingArrangement: 'slideBolt' }),
    ...(['deadboltPlusLatch', 'doubleCylinder', 'barricade'] as const).map(
      (existingArrangement): CaseRow => [
        existingArrangement,
        { ...office, existingArrangement },
        'yes',
        { clause: 'c', does: 'warn existingArrangement' },
      ],
    ),
    ['the bar alone', { ...office, existingArrangement: 'freeBar' }, 'no', { clause: 'c' }],
    ...around('d', {}, 'magnet/safe/sensor'),
    ...onEach(['boltMotor/safe/sensor'], 'bolt with sensor', office, 'yes', {
      clause: 'd',
      does: 'caution',
    }),
    ...onEach(
      ['magnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch', 'exitTrim/secure/free'],
      'the bar releases it',
      office,
      'no',
      'd',
    ),
  ]),
  ...noBar('e', hall),
  ['school room for 49', { ...hall, occupancyGroup: 'E' }, 'yes', { clause: 'e' }],
  ['hall for 50', { ...hall, occupantLoad: 50 }, 'no', { clause: 'e' }],
  ['office for 49', { ...hall, occupancyGroup: 'B', roomUse: 'office' }, 'no', { clause: 'e' }],
  ['NFPA 101 alone', hall, 'no', { clause: 'e', basis: { ibc: null, nfpa101: 2021 } }],
  ...noBar('f', floor),
  ['office floor for 49', { ...floor, occupantLoad: 49 }, 'no', { clause: 'f' }],
  [
    'hall for 60, IBC not adopted',
    { ...hall, occupantLoad: 60 },
    'no',
    { clause: 'f', basis: { ibc: null, nfpa101: 2021 } },
  ],
  [
    'school for 60, IBC not adopted',
    { ...hall, occupancyGroup: 'E', occupantLoad: 60 },
    'no',
    { clause: 'f', basis: { ibc: null, nfpa101: 2021 } },
  ],
  [
    'high hazard for 50, IBC not adopted',
    { ...floor, occupancyGroup: 'H-2' },
    'no',
    { clause: 'f', basis: { ibc: null } },
  ],
  [
    'day care for 100, NFPA 101',
    { ...floor, roomUse: 'dayCare', occupantLoad: 100 },
    'no',
    { clause: 'f', basis: { nfpa101: 2021 } },
  ],
  ...noBar('g', cold, { ibc: 2018 }),
  ['IBC 2021', cold, 'no', { clause: 'g' }],
  ['small room, IBC 2021', { ...cold, roomAreaFt2: 500 }, 'no', { clause: 'g' }],
  ['office', { ...cold, roomUse: 'office' }, 'no', { clause: 'g', basis: { ibc: 2018 } }],
  ...noBar('h', switchgear),
  ['800 A near the door', { ...switchgear, equipmentAmps: 800 }, 'no', { clause: 'h' }],
  ['office', { ...switchgear, roomUse: 'office' }, 'no', { clause: 'h' }],
  [
    'hall for 50, nothing latches or locks',
    { ...hall, occupantLoad: 50, latch: 'pushPull', readerSides: 'none' },
    'no',
    { clause: 'e' },
  ],
  ['battery room in a hall', { ...hall, roomUse: 'batteryRoom' }, 'no', { clause: 'e' }],
);
