import type { CodeBasis } from '../codes/basis.ts';
import type { DerivedKey } from '../logic/derivedKeys.ts';
import type { VerdictWord } from '../logic/verdict.ts';
import type { FactValues } from '../model/fields.ts';

/** `[derived fact, what is known, what follows, basis]`, as the cases of a rule. */
export type DerivedCase = readonly [DerivedKey, FactValues, VerdictWord, Partial<CodeBasis>?];

const each = <K extends keyof FactValues>(
  derived: DerivedKey,
  fact: K,
  values: readonly NonNullable<FactValues[K]>[],
  expect: VerdictWord,
  more: FactValues = {},
): readonly DerivedCase[] => values.map((value) => [derived, { ...more, [fact]: value }, expect]);

/** A door at which no reason for panic hardware holds, whatever is left out below. */
const noPanic: FactValues = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'mortise',
  readerSides: 'secure',
  occupancyGroup: 'B',
  roomUse: 'office',
  occupantLoad: 10,
  roomAreaFt2: 100,
};
const electrical: FactValues = {
  ...noPanic,
  roomUse: 'electricalRoom',
  overcurrentDevices: true,
  equipmentWidthFt: 7,
  equipmentVolts: 480,
};
const nfpaOnly = { ibc: null, nfpa101: 2021 } as const;
const noLatch: FactValues = { latch: 'pushPull', readerSides: 'none' };

export const derivedCases: readonly DerivedCase[] = [
  ['isEgress', { egressRole: 'exitAccess' }, 'yes'],
  ['isEgress', { egressRole: 'convenience' }, 'yes'],
  ...each('isEgress', 'egressRole', ['noOccupiedSpace', 'vehicleDoor', 'sealedOff'], 'no'),
  ['isEgress', {}, 'unknown'],

  ['fireRated', { fireRatingMin: 1 }, 'yes'],
  ['fireRated', { fireRatingMin: 20 }, 'yes'],
  ['fireRated', { fireRatingMin: 0, wallRatingMin: 0 }, 'no'],
  ['fireRated', { fireRatingMin: 0, wallRatingMin: 1, wallKind: 'fireBarrier' }, 'yes'],
  ...each('fireRated', 'wallKind', ['none', 'smokePartition'], 'no', { fireRatingMin: 0, wallRatingMin: 60 }),
  ['fireRated', { fireRatingMin: 0, wallRatingMin: 60 }, 'unknown'],
  ['fireRated', { fireRatingMin: 0 }, 'unknown'],
  ['fireRated', { wallRatingMin: 0 }, 'unknown'],
  ['fireRated', { wallRatingMin: 60, wallKind: 'fireBarrier' }, 'yes'],

  ...each('isPair', 'doorType', ['pair', 'doubleEgressPair'], 'yes'),
  ['isPair', { doorType: 'single' }, 'no'],
  ['isPair', {}, 'unknown'],

  ...each(
    'isSwinging',
    'doorType',
    ['single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced', 'gateSwing'],
    'yes',
  ),
  ...each('isSwinging', 'doorType', ['slidingAutomatic', 'revolving', 'gateSlide'], 'no'),
  ['isSwinging', {}, 'unknown'],

  ...each('isStairDoor', 'egressRole', ['stairEntry', 'stairDischarge'], 'yes'),
  ['isStairDoor', { egressRole: 'exitAccess' }, 'no'],
  ['isStairDoor', {}, 'unknown'],

  ...each('stairSideToLock', 'stairLockWanted', ['stairSide', 'both'], 'yes', { egressRole: 'stairEntry' }),
  ...each('stairSideToLock', 'stairLockWanted', ['floorSide', 'none'], 'no', { egressRole: 'stairEntry' }),
  ['stairSideToLock', { egressRole: 'stairDischarge', stairLockWanted: 'both' }, 'no'],
  ['stairSideToLock', { egressRole: 'stairEntry' }, 'unknown'],
  ...each('floorSideToLock', 'stairLockWanted', ['floorSide', 'both'], 'yes', { egressRole: 'stairEntry' }),
  ...each('floorSideToLock', 'stairLockWanted', ['stairSide', 'none'], 'no', { egressRole: 'stairEntry' }),
  ['floorSideToLock', { egressRole: 'stairDischarge', stairLockWanted: 'both' }, 'no'],
  ['floorSideToLock', { egressRole: 'stairEntry' }, 'unknown'],

  ['peopleOnLockedSide', { egressRole: 'elevatorLobby', lobbyHasOtherExit: false }, 'yes'],
  [
    'peopleOnLockedSide',
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: true, exitDirection: 'both', doorType: 'single' },
    'no',
  ],
  ['peopleOnLockedSide', { egressRole: 'elevatorLobby' }, 'unknown'],
  ...each(
    'peopleOnLockedSide',
    'egressRole',
    [
      'crossCorridor',
      'horizontalExit',
      'exitAccess',
      'exteriorExit',
      'exteriorSpace',
      'egressCourt',
      'dischargeGate',
      'stairDischarge',
      'roofDoor',
      'convenience',
    ],
    'yes',
    { exitDirection: 'both', doorType: 'single' },
  ),
  ...each('peopleOnLockedSide', 'egressRole', ['stairEntry', 'noOccupiedSpace', 'sealedOff'], 'no', {
    exitDirection: 'both',
    doorType: 'single',
  }),
  ['peopleOnLockedSide', { egressRole: 'crossCorridor', exitDirection: 'towardSecure' }, 'no'],
  [
    'peopleOnLockedSide',
    { egressRole: 'crossCorridor', exitDirection: 'both', doorType: 'doubleEgressPair' },
    'no',
  ],
  ['peopleOnLockedSide', { egressRole: 'crossCorridor', doorType: 'single' }, 'unknown'],
  ...each('peopleOnLockedSide', 'egressRole', ['exteriorSpace', 'egressCourt', 'convenience'], 'unknown', {
    doorType: 'single',
  }),
  ...each('peopleOnLockedSide', 'roomUse', ['corridor', 'lobby'], 'unknown', {
    egressRole: 'exitAccess',
    doorType: 'single',
  }),
  ['peopleOnLockedSide', { egressRole: 'exitAccess', roomUse: 'office', doorType: 'single' }, 'no'],
  ...each(
    'peopleOnLockedSide',
    'egressRole',
    ['exteriorExit', 'dischargeGate', 'stairDischarge', 'roofDoor'],
    'no',
    { doorType: 'single', roomUse: 'lobby' },
  ),

  ...each('groupA', 'occupancyGroup', ['A-1', 'A-2', 'A-3', 'A-4', 'A-5'], 'yes'),
  ...each('groupE', 'occupancyGroup', ['E'], 'yes'),
  ...each('groupH', 'occupancyGroup', ['H-1', 'H-2', 'H-3', 'H-4', 'H-5'], 'yes'),
  ...each('groupI', 'occupancyGroup', ['I-1.1', 'I-1.2', 'I-2', 'I-3', 'I-4'], 'yes'),
  ...(['groupA', 'groupE', 'groupH', 'groupI'] as const).flatMap((key): DerivedCase[] => [
    [key, { occupancyGroup: 'B' }, 'no'],
    [key, {}, 'unknown'],
  ]),

  ['hasExitDevice', { panicPresent: true }, 'yes'],
  ...each('hasExitDevice', 'latch', ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit'], 'yes', {
    panicPresent: false,
  }),
  ['hasExitDevice', { panicPresent: false, latch: 'mortise' }, 'no'],
  ['hasExitDevice', { latch: 'mortise' }, 'unknown'],

  // One case for each reason; what each reason asks is held by the cases of its rule.
  ['panicWithLock', noPanic, 'no'],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 50 }, 'yes'],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 50, ...noLatch }, 'yes'],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'H-3' }, 'yes'],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'H-3', ...noLatch }, 'yes'],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 100 }, 'yes', nfpaOnly],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 100, ...noLatch }, 'yes', nfpaOnly],
  ['panicWithLock', { ...noPanic, roomUse: 'batteryRoom' }, 'yes'],
  ['panicWithLock', { ...electrical, equipmentAmps: 800, doorToWorkingSpaceFt: 10 }, 'yes'],
  ['panicWithLock', { ...electrical, equipmentAmps: 100, doorToWorkingSpaceFt: 10 }, 'no'],
  ['panicWithLock', { ...electrical, equipmentAmps: 1200, doorToWorkingSpaceFt: 90 }, 'yes', { ibc: 2018 }],
  ['panicWithLock', { ...electrical, equipmentAmps: 1200, doorToWorkingSpaceFt: 90 }, 'no'],
  ['panicWithLock', { ...noPanic, roomUse: 'refrigerationMachinery', roomAreaFt2: 1001 }, 'yes'],
  ['panicWithLock', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 49 }, 'no'],
  ['panicWithLock', {}, 'unknown'],
  ['panicRequired', noPanic, 'no'],
  ['panicRequired', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 50 }, 'yes'],
  ['panicRequired', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 50, ...noLatch }, 'no'],
  ['panicRequired', { ...noPanic, occupancyGroup: 'H-3' }, 'yes'],
  ['panicRequired', { ...noPanic, occupancyGroup: 'H-3', ...noLatch }, 'no'],
  ['panicRequired', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 100 }, 'yes', nfpaOnly],
  ['panicRequired', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 100, ...noLatch }, 'no', nfpaOnly],
  ['panicRequired', { ...noPanic, roomUse: 'batteryRoom' }, 'yes'],
  ['panicRequired', { ...electrical, equipmentAmps: 800, doorToWorkingSpaceFt: 10 }, 'yes'],
  ['panicRequired', { ...electrical, equipmentAmps: 100, doorToWorkingSpaceFt: 10 }, 'no'],
  ['panicRequired', { ...electrical, equipmentAmps: 1200, doorToWorkingSpaceFt: 90 }, 'yes', { ibc: 2018 }],
  ['panicRequired', { ...electrical, equipmentAmps: 1200, doorToWorkingSpaceFt: 90 }, 'no'],
  ['panicRequired', { ...noPanic, roomUse: 'refrigerationMachinery', roomAreaFt2: 1001 }, 'yes'],
  ['panicRequired', { ...noPanic, occupancyGroup: 'A-3', occupantLoad: 49 }, 'no'],
  ['panicRequired', {}, 'unknown'],

  ['wantsReader', { readerSides: 'secure' }, 'yes'],
  ['wantsReader', { readerSides: 'none' }, 'no'],
  ['wantsReader', {}, 'unknown'],
  ...(['R-1', 'R-2', 'R-3', 'R-4', 'I-1.1', 'I-4'] as const).flatMap(
    (occupancyGroup): readonly DerivedCase[] => [
      ['fullSprinklers', { occupancyGroup, sprinklered: true }, 'unknown'],
      ['fullSprinklers', { occupancyGroup, sprinklered: true, sprinklerKind: 'nfpa13' }, 'yes'],
      ['fullSprinklers', { occupancyGroup, sprinklered: true, sprinklerKind: 'nfpa13R' }, 'no'],
      ['fullSprinklers', { occupancyGroup, sprinklered: true, sprinklerKind: 'nfpa13D' }, 'no'],
    ],
  ),
  ['fullSprinklers', { occupancyGroup: 'B', sprinklered: true }, 'yes'],
  ['fullSprinklers', { occupancyGroup: 'B', sprinklered: true, sprinklerKind: 'nfpa13R' }, 'no'],
  ['fullSprinklers', { sprinklered: true, sprinklerKind: 'nfpa13' }, 'yes'],
  ['fullSprinklers', { sprinklered: true, sprinklerKind: 'nfpa13D' }, 'no'],
  ['fullSprinklers', { sprinklered: true }, 'unknown'],
  ['fullSprinklers', { sprinklered: false }, 'no'],
];
