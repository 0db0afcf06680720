import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import { silentDefaults } from '../../src/domain/decide/defaults.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';

/**
 * The decision space made countable: for each fact that steers a decision the values that rules tell apart.
 * `undefined` is "not surveyed". Every combination is one opening under one basis.
 */
type Axis = { readonly name: string; readonly values: readonly Partial<FactValues>[] };

const axis = <K extends keyof FactValues>(
  key: K,
  ...values: readonly (FactValues[K] | undefined)[]
): Axis => ({
  name: key,
  values: values.map((value) => (value === undefined ? {} : { [key]: value })),
});

/** Door, frame and latch go together: these are the openings of the fit table that behave differently. */
const doors: Axis = {
  name: 'door',
  values: [
    { doorType: 'single', leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal', latch: 'bored' },
    { doorType: 'single', leafMaterial: 'woodMineralCore', frameMaterial: 'hollowMetal', latch: 'mortise' },
    {
      doorType: 'single',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'rimExit',
      panicPresent: true,
    },
    {
      doorType: 'pair',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'verticalRods',
      panicPresent: true,
      inactiveBolts: 'rods',
    },
    {
      doorType: 'pair',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'mortise',
      inactiveBolts: 'automaticFlush',
      coordinator: true,
    },
    { doorType: 'single', leafMaterial: 'aluminiumNarrow', frameMaterial: 'aluminium', latch: 'deadlatch' },
    { doorType: 'single', leafMaterial: 'glassFrameless', frameMaterial: 'none', latch: 'patch' },
    { doorType: 'single', leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal', latch: 'pushPull' },
    { doorType: 'single', latch: undefined as never, leafMaterial: 'woodSolidCore' },
  ].map(({ latch, ...rest }) => (latch === undefined ? rest : { latch, ...rest })) as Partial<FactValues>[],
};

const uses: Axis = {
  name: 'use and group',
  values: [
    { occupancyGroup: 'B', roomUse: 'office' },
    { occupancyGroup: 'B', roomUse: 'serverRoom' },
    { occupancyGroup: 'A-3', roomUse: 'conference' },
    { occupancyGroup: 'A-3', roomUse: 'courtroom' },
    { occupancyGroup: 'E', roomUse: 'classroom' },
    { occupancyGroup: 'H-3', roomUse: 'laboratory' },
    {
      occupancyGroup: 'I-1.2',
      roomUse: 'memoryCare',
      clinicalNeed: 'containment',
      clinicalArea: 'cognitive',
      staffCanUnlock: true,
    },
    {
      occupancyGroup: 'I-2',
      roomUse: 'patientUnit',
      clinicalNeed: 'containment',
      clinicalArea: 'psychiatric',
      staffCanUnlock: true,
    },
    { occupancyGroup: 'I-3', roomUse: 'detention' },
    { occupancyGroup: 'M', roomUse: 'storage' },
    { occupancyGroup: 'R-2', roomUse: 'dwellingEntrance' },
    { roomUse: 'office' },
  ],
};

const roles: Axis = {
  name: 'role',
  values: [
    { egressRole: 'exitAccess' },
    { egressRole: 'exteriorExit', exterior: true },
    { egressRole: 'stairEntry', stairLockWanted: 'none', stairStories: 5, readerSides: 'none' },
    {
      egressRole: 'stairEntry',
      stairLockWanted: 'stairSide',
      stairStories: 5,
      stairReleasePoint: 'fireCommandCenter',
      reentryFloorTraps: false,
    },
    { egressRole: 'stairDischarge', exterior: true },
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: false },
    { egressRole: 'horizontalExit' },
    {
      egressRole: 'noOccupiedSpace',
      roomUse: 'equipment',
      occupantLoad: 0,
      panicPresent: false,
      exitSign: false,
    },
    {},
  ],
};

const wishes: Axis = {
  name: 'wish',
  values: [
    { readerSides: 'secure' },
    { readerSides: 'none' },
    { readerSides: 'secure', wishDelayedEgress: true, delayedDoorsOnPath: 0 },
    { readerSides: 'secure', wishControlledEgress: true, controlledDoorsOnPath: 0 },
    { readerSides: 'both', wishScheduledUnlock: true },
  ],
};

const protection: Axis = {
  name: 'protection',
  values: [
    { sprinklered: true, fireAlarm: true, detectionThroughout: true },
    { sprinklered: false, fireAlarm: true, detectionThroughout: false },
    { sprinklered: false, fireAlarm: false, detectionThroughout: false },
    {},
  ],
};

const axes: readonly Axis[] = [
  doors,
  uses,
  wishes,
  protection,
  axis('fireRatingMin', 0, 20, 90, undefined),
  axis('occupantLoad', 10, 49, 50, 400, undefined),
  axis('securityNeed', 'low', 'critical'),
  axis('operator', 'none', 'lowEnergy'),
  // Last, because a role corrects what cannot stand beside it (nobody is counted where nobody can be).
  roles,
];

export const bases: readonly CodeBasis[] = [
  { ibc: 2018, nfpa101: null, nec: 2017, nfpa72: 2016 },
  { ibc: 2021, nfpa101: null, nec: 2020, nfpa72: 2019 },
  { ibc: 2024, nfpa101: null, nec: 2023, nfpa72: 2022 },
  { ibc: null, nfpa101: 2021, nec: 2020, nfpa72: 2010 },
  { ibc: 2021, nfpa101: 2021, nec: 2020, nfpa72: 2019 },
];

/** What every opening of the space has in common, so that nothing else keeps it open. */
const shared: FactValues = {
  ...(Object.fromEntries(silentDefaults.map((one) => [one.fact, one.value])) as FactValues),
  exitDirection: 'towardSecure',
  panicPresent: false,
  equipmentAmps: 100,
  equipmentVolts: 480,
  equipmentWidthFt: 3,
  overcurrentDevices: false,
  doorToWorkingSpaceFt: 100,
  cityKeepsFourStoryLimit: false,
  cityKeepsPublicDisarm: false,
  othersLeaveThroughRoom: false,
  suiteDoor: 'none',
  mainDoor: false,
  publicEntrance: false,
  lobbyHasOtherExit: true,
  lockFunction: 'storeroom',
  leafRaceway: true,
  strikePrep: 'ansi478',
  wallRatingMin: 0,
  wallKind: 'none',
  powerAtDoor: true,
  cablePath: true,
  workStatus: 'new',
  frameGrouted: false,
  highRise: false,
  storiesAboveGrade: 5,
  swingsWithEgress: true,
  closing: 'selfClosing',
  holdOpen: 'none',
  fireLabel: 'seen',
  basisConfirmed: true,
  amendmentsReviewed: true,
};

const sizeOf = (list: readonly Axis[]) => list.reduce((size, one) => size * one.values.length, bases.length);
export const spaceSize = sizeOf(axes);

export interface Point {
  readonly index: number;
  readonly facts: FactValues;
  readonly basis: CodeBasis;
}

/** The opening at a place in the space; places count from 0 to `spaceSize` − 1. */
export function pointAt(index: number): Point {
  return pointIn(axes, shared, index);
}

function pointIn(list: readonly Axis[], common: FactValues, index: number): Point {
  let rest = index;
  const take = (count: number) => {
    const digit = rest % count;
    rest = Math.floor(rest / count);
    return digit;
  };
  const basis = bases[take(bases.length)] as CodeBasis;
  const facts: FactValues = Object.assign(
    {},
    common,
    ...list.map((one) => one.values[take(one.values.length)]),
  );
  return { index, facts, basis };
}

/**
 * A second space, of doors at which a lock can shut somebody in: what hangs on the leaf and what its lever does, who
 * passes which way, where a credential is read, what is wished of a stair door. Answers left out are part of it.
 */
const leaves: Axis = {
  name: 'door',
  values: [
    { doorType: 'single', leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal', latch: 'mortise' },
    { doorType: 'single', leafMaterial: 'woodSolidCore', frameMaterial: 'hollowMetal', latch: 'bored' },
    { doorType: 'single', leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal', latch: 'pushPull' },
    {
      doorType: 'single',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'boredPlusDeadbolt',
    },
    {
      doorType: 'single',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'rimExit',
      panicPresent: true,
    },
    { doorType: 'single', leafMaterial: 'glassFrameless', frameMaterial: 'none', latch: 'patch' },
    { doorType: 'gateSwing', leafMaterial: 'gateFramed', frameMaterial: 'posts', latch: 'gateLock' },
    {
      doorType: 'pair',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'verticalRods',
      panicPresent: true,
      inactiveBolts: 'rods',
    },
    {
      doorType: 'pair',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'mortise',
      inactiveBolts: 'manualFlush',
    },
    {
      doorType: 'pair',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'mortise',
      inactiveBolts: 'automaticFlush',
      coordinator: true,
    },
    { doorType: 'pair', leafMaterial: 'glassFrameless', frameMaterial: 'none', latch: 'patch' },
    { doorType: 'single', leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal' },
  ],
};
const people: Axis = {
  name: 'people',
  values: [
    { occupancyGroup: 'B', roomUse: 'office', occupantLoad: 20 },
    { occupancyGroup: 'A-3', roomUse: 'other', occupantLoad: 200 },
    { occupancyGroup: 'E', roomUse: 'other', occupantLoad: 300 },
    { occupancyGroup: 'H-3', roomUse: 'laboratory', occupantLoad: 8 },
    { occupancyGroup: 'B', roomUse: 'refrigerationMachinery', roomAreaFt2: 1200, occupantLoad: 4 },
    {
      occupancyGroup: 'I-1.2',
      roomUse: 'memoryCare',
      clinicalNeed: 'containment',
      clinicalArea: 'cognitive',
      staffCanUnlock: true,
      occupantLoad: 20,
    },
  ],
};
const places: Axis = {
  name: 'place',
  values: [
    { egressRole: 'exitAccess' },
    { egressRole: 'exteriorExit', exterior: true },
    { egressRole: 'stairEntry', stairLockWanted: 'none' },
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    { egressRole: 'stairEntry', stairLockWanted: 'floorSide' },
    { egressRole: 'stairEntry', stairLockWanted: 'both' },
    { egressRole: 'stairEntry' },
    { egressRole: 'stairDischarge', exterior: true },
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: false, attendedStation: true },
    { egressRole: 'horizontalExit' },
    { egressRole: 'crossCorridor' },
    { egressRole: 'noOccupiedSpace', occupantLoad: 0, panicPresent: false, exitSign: false },
  ],
};
const heldAxes: readonly Axis[] = [
  leaves,
  people,
  axis('exitDirection', 'towardSecure', 'both', undefined),
  axis('readerSides', 'none', 'secure', 'both', undefined),
  {
    name: 'wish',
    values: [
      {},
      { wishScheduledUnlock: true },
      { wishLockdown: true },
      { wishAfterHoursMagnet: true },
      { wishDelayedEgress: true, delayedDoorsOnPath: 0 },
      { wishControlledEgress: true, controlledDoorsOnPath: 0 },
    ],
  },
  axis('lockFunction', 'storeroom', 'classroom', 'passage', 'none', undefined),
  axis('workStatus', 'new', 'existing'),
  axis('fireRatingMin', 0, 90),
  axis('egressHardwareHeightIn', 40, 52, undefined),
  {
    name: 'protection',
    values: [
      { sprinklered: true, fireAlarm: true, detectionThroughout: true },
      { sprinklered: false, fireAlarm: false, detectionThroughout: false },
    ],
  },
  places,
];
const heldShared: FactValues = {
  ...shared,
  stairStories: 6,
  stairReleasePoint: 'mainEntrance',
  fireCommandCenter: false,
  reentryFloorTraps: false,
  singleExitStair: false,
  selectedReentry: false,
  inactiveNeededForCapacity: false,
  inactiveHasHardware: false,
  poolBarrierGate: false,
  securityNeed: 'medium',
  operator: 'none',
  existingArrangement: 'freeLever',
};
export const heldSpaceSize = sizeOf(heldAxes);
export function heldPointAt(index: number): Point {
  return pointIn(heldAxes, heldShared, index);
}

/** A fixed sequence of numbers, so that a failure can be looked at again (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
