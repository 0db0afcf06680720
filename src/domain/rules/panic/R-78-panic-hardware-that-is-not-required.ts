import { under as cite } from '../../codes/sections.ts';
import { all, any, atLeast, ibc, is, no, not, under, yes } from '../../logic/condition.ts';
import type { FactValues } from '../../model/fields.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';
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

/** An egress leaf that swings, has no bar and needs none: where people would look for one it is said why not. */
const bareEgress = all(yes('isEgress'), yes('isSwinging'), no('hasExitDevice'), no('panicRequired'));
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

export const R78 = defineRule({
  id: 'R-78',
  title: 'Panic hardware that is not required',
  family: 'panic',
  book: 'ibc',
  cites: [cite('freeEgressIbc'), cite('unlatching'), cite('locksAndLatches'), cite('panicHardware')],
  confidence: 'secondary',
  why: 'People trust a bar they can see; one that does not open the door is worse than none.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired')),
      says: 'None of the rules checked here requires the bar on this door. As long as it is there, one push must open the door.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired'), yes('mainDoor')),
      of: { release: ['keyInside'] },
      says: 'A key lock beside a push bar on the main door: a reviewer must accept it, because the bar does nothing while the key has locked the door.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        yes('hasExitDevice'),
        no('panicRequired'),
        is('existingArrangement', 'deadboltPlusLatch', 'padlock', 'slideBolt', 'doubleCylinder', 'barricade'),
      ),
      says: 'Something else locks the door beside its push bar today, so a push on the bar does not open it; have it removed.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired')),
      of: { release: ['sensor'] },
      says: 'The bar alone would not release this lock; give the bar its own switch, because people will push it and nothing else.',
    },
    {
      key: 'e',
      effect: 'permit',
      when: all(bareEgress, ibc(), any(yes('groupA'), yes('groupE')), under('occupantLoad', 'panicLoadIbc')),
      says: 'A lever is enough under the rules checked here: panic hardware is required in this group from 50 people, and the door serves {occupantLoad}.',
    },
    {
      key: 'f',
      effect: 'permit',
      when: all(
        bareEgress,
        not(any(yes('groupA'), yes('groupE'), yes('groupH'))),
        atLeast('occupantLoad', 'panicLoadIbc'),
      ),
      says: 'A lever is enough under the rules checked here: {occupantLoad} in {occupancyGroup} does not require panic hardware; assembly, schools, day care and high hazard do.',
    },
    {
      key: 'g',
      effect: 'permit',
      when: all(bareEgress, ibc({ to: 2018 }), is('roomUse', 'refrigerationMachinery')),
      says: 'The 2018 edition does not require panic hardware at refrigeration machinery rooms; later editions do, over 1,000 ft².',
    },
    {
      key: 'h',
      effect: 'permit',
      when: all(bareEgress, is('roomUse', 'electricalRoom')),
      says: 'The equipment entered is too small, or too far from the door, for the panic hardware of electrical rooms.',
    },
  ],
  cases: cases(
    ...doing({ a: 'caution', b: 'signOff must' }, [
      ...around('a', {}),
      ...around('b', { mainDoor: true }, 'mechanicalLock/none/keyInside'),
      [
        'side door',
        { ...office, mainDoor: false },
        'no',
        { clause: 'b', on: 'mechanicalLock/none/keyInside' },
      ],
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
  ),
});
