import { describe, expect, it } from 'vitest';
import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import { defaultBasis } from '../../src/domain/codes/basis.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import type { DecisionState } from '../../src/domain/decide/decision.ts';
import { partsOf } from '../../src/domain/decide/parts.ts';
import { signOffReasons } from '../../src/domain/decide/signOff.ts';
import { candidateById, type Release } from '../../src/domain/devices/candidates.ts';
import type { DeviceFamily, FailMode } from '../../src/domain/devices/devices.ts';
import type { ItemId } from '../../src/domain/devices/items.ts';
import type { Facts } from '../../src/domain/model/fact.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';

/**
 * Openings from practice, with the answer a door-hardware consultant would put a name to. What is expected here is
 * what a code section or plain trade practice decides; which of several lawful devices scores best is left open.
 */
interface Answer {
  readonly state?: DecisionState;
  /** What may lead: any of these families. */
  readonly family?: readonly DeviceFamily[];
  readonly release?: readonly Release[];
  readonly failMode?: readonly FailMode[];
  /** Parts that the set must hold, and parts that have no place in it. */
  readonly has?: readonly ItemId[];
  readonly hasNot?: readonly ItemId[];
  /** Candidates that must be ruled out. */
  readonly never?: readonly string[];
  /** Candidates that may not be ruled out. */
  readonly may?: readonly string[];
  /** Whether a reviewer must sign before issue. */
  readonly signed?: boolean;
}

/** Facts as surveyed; one that is undefined was not asked about. */
type Surveyed = { readonly [K in keyof FactValues]: FactValues[K] | undefined };

interface Row {
  readonly opening: string;
  /** The section and edition the answer rests on, or "from memory", or "trade practice". */
  readonly rests: string;
  readonly facts: Surveyed;
  readonly basis?: Partial<CodeBasis>;
  readonly want: Answer;
}

// ── Doors and places that many rows share ───────────────────────────────────────────────────────────────

const building: FactValues = {
  sprinklered: true,
  detectionThroughout: false,
  fireAlarm: true,
  voiceAlarm: false,
  highRise: false,
  storiesAboveGrade: 3,
  fireCommandCenter: false,
  attendedStation: true,
  basisConfirmed: true,
  amendmentsReviewed: true,
  oshaWorkplace: false,
  federalHealthCare: false,
};

/** A new office door with a reader outside, everything surveyed that anybody would ask about. */
const office: FactValues = {
  ...building,
  doorType: 'single',
  leafMaterial: 'hollowMetal',
  leafWidthIn: 36,
  leafHeightIn: 84,
  leafThicknessIn: 1.75,
  hinges: 'butt',
  opensTo90: true,
  handing: 'LHR',
  swingsWithEgress: true,
  frameMaterial: 'hollowMetal',
  frameGrouted: false,
  frameConduit: true,
  strikePrep: 'ansi478',
  wallConstruction: 'gypsum',
  latch: 'mortise',
  lockFunction: 'storeroom',
  panicPresent: false,
  egressHardwareHeightIn: 40,
  latchPreload: false,
  closing: 'selfClosing',
  existingArrangement: 'none',
  fireRatingMin: 0,
  wallRatingMin: 0,
  wallKind: 'none',
  smokeSeals: false,
  holdOpen: 'none',
  egressRole: 'exitAccess',
  exitDirection: 'towardSecure',
  occupantLoad: 12,
  mainDoor: false,
  publicEntrance: false,
  exitSign: false,
  delayedDoorsOnPath: 0,
  controlledDoorsOnPath: 0,
  othersLeaveThroughRoom: false,
  doorsInSeries: false,
  accessibleRoute: true,
  clearWidthIn: 33,
  fireDepartmentAccess: false,
  roomUse: 'office',
  agentFlooded: false,
  placeOfWorship: false,
  occupancyGroup: 'B',
  equipmentAmps: 0,
  equipmentVolts: 0,
  clinicalNeed: 'none',
  clinicalArea: 'none',
  suiteDoor: 'none',
  readerSides: 'secure',
  securityNeed: 'medium',
  traffic: 'medium',
  appearance: 'standard',
  powerAtDoor: true,
  cablePath: true,
  leafRaceway: true,
  lockPowerSource: 'dedicated',
  supplyVolts: '24',
  exterior: false,
  operator: 'none',
  sensorTrippable: false,
  workStatus: 'new',
};
const bar: FactValues = { latch: 'rimExit', panicPresent: true };
const rated = (fireRatingMin: number, wallRatingMin: number, wallKind: FactValues['wallKind']): FactValues =>
  ({ fireRatingMin, wallRatingMin, wallKind, fireLabel: 'seen', frameLabelMin: fireRatingMin }) as FactValues;
const ratedBar: FactValues = { ...bar, exitHardwareFireListed: true, lessBottomRod: false };
const bareGlass: FactValues = {
  leafMaterial: 'glassFrameless',
  leafThicknessIn: 0.5,
  frameMaterial: 'none',
  wallConstruction: 'glass',
  strikePrep: 'none',
  latch: 'pushPull',
  glassRails: 'none',
  hinges: 'pivot',
};
const storefront: FactValues = {
  leafMaterial: 'aluminiumNarrow',
  frameMaterial: 'aluminium',
  strikePrep: 'aluminium458',
  latch: 'deadlatch',
  egressRole: 'exteriorExit',
  exterior: true,
  hinges: 'pivot',
};
const pair: FactValues = {
  doorType: 'pair',
  inactiveBolts: 'manualFlush',
  inactiveHasHardware: false,
  inactiveNeededForCapacity: false,
  coordinator: false,
  activeCouldCloseFirst: false,
  mullion: false,
};
const rods: FactValues = {
  doorType: 'pair',
  inactiveBolts: 'rods',
  inactiveHasHardware: true,
  inactiveNeededForCapacity: true,
  latch: 'verticalRods',
  panicPresent: true,
  mullion: false,
  coordinator: false,
};
const stair: FactValues = {
  ...rated(60, 60, 'exitEnclosure'),
  egressRole: 'stairEntry',
  roomUse: 'corridor',
  stairLockWanted: 'stairSide',
  stairStories: 3,
  stairReleasePoint: 'mainEntrance',
  selectedReentry: false,
  singleExitStair: false,
  reentryFloorTraps: false,
};
const tower: FactValues = {
  ...stair,
  ...rated(90, 120, 'exitEnclosure'),
  stairStories: 20,
  storiesAboveGrade: 20,
  highRise: true,
  fireCommandCenter: true,
  voiceAlarm: true,
  stairReleasePoint: 'fireCommandCenter',
};
const lobby: FactValues = {
  egressRole: 'elevatorLobby',
  roomUse: 'lobby',
  lobbyHasOtherExit: false,
};
const hall: FactValues = { occupancyGroup: 'A-3', roomUse: 'conference', occupantLoad: 120 };
const hospital: FactValues = { occupancyGroup: 'I-2', suiteDoor: 'none', staffCanUnlock: true };
const delayWish: FactValues = { wishDelayedEgress: true, wishDelay30s: false, wishNoDelaySign: false };
const controlWish: FactValues = {
  wishControlledEgress: true,
  staffCanUnlock: true,
  readerSides: 'both',
  abductionSystem: false,
};

const ibc2018 = { ibc: 2018 } as const;
const ibc2024 = { ibc: 2024 } as const;
const nfpaOnly = { ibc: null, nfpa101: 2021 } as const;
const both = { ibc: 2021, nfpa101: 2021 } as const;

const unlawful: readonly string[] = [
  'magnet/safe/none',
  'magnet/safe/alarmOnly',
  'magnet/safe/buttonOnly',
  'magnet/safe/credentialOut',
  'mortiseLock/secure/credentialOut',
  'cylindricalLock/secure/credentialOut',
  'boltSolenoid/secure/sensor',
  'boltMotor/secure/doorSwitch',
  'strikeMortise/secure/none',
  'strikeRim/secure/none',
];
const plain: readonly DeviceFamily[] = ['strike', 'lock', 'exitDevice', 'battery'];
const specialParts: readonly ItemId[] = ['exitSensor', 'pushToExit', 'signPushToExit', 'fireAlarmRelease'];

const rows: readonly Row[] = [
  // ── Ordinary doors ──────────────────────────────────────────────────────────────────────────────────
  {
    opening: 'office, reader outside, lever inside',
    rests: 'IBC 2021 1010.2 and 1010.2.1: an ordinary lock, nothing to add, nobody to sign',
    facts: office,
    want: {
      state: 'settled',
      family: plain,
      release: ['free'],
      hasNot: specialParts,
      never: [...unlawful, 'mechanicalLock/none/keyInside'],
      may: ['mortiseLock/secure/free', 'strikeMortise/secure/free'],
      signed: false,
    },
  },
  {
    opening: 'office without a reader: a mechanical lock and no electrician',
    rests: 'trade practice',
    facts: { ...office, readerSides: 'none' },
    want: {
      state: 'settled',
      family: ['mechanical'],
      release: ['free'],
      hasNot: ['lockSupply', 'reader', 'requestToExit', ...specialParts],
      signed: false,
    },
  },
  {
    opening: 'tenant entrance in a one-hour corridor, 20-minute door',
    rests: 'IBC 2021 716.2.6.1 and Table 716.1(2); NFPA 80 6.4.4',
    facts: { ...office, ...rated(20, 60, 'corridor'), roomUse: 'suiteEntrance', occupantLoad: 40 },
    want: {
      state: 'settled',
      family: ['strike', 'lock', 'battery'],
      release: ['free'],
      hasNot: specialParts,
      never: ['strikeMortise/safe/free', 'boltSolenoid/safe/sensor'],
      may: ['mortiseLock/secure/free', 'mortiseLock/safe/free', 'strikeMortise/secure/free'],
      signed: false,
    },
  },
  {
    opening: 'the same entrance, to stand unlocked by schedule with a strike chosen: detection relatches it',
    rests: 'NFPA 80 6.4.4',
    facts: {
      ...office,
      ...rated(20, 60, 'corridor'),
      roomUse: 'suiteEntrance',
      wishScheduledUnlock: true,
      leafRaceway: false,
    },
    want: { family: ['strike', 'lock'], never: ['strikeMortise/safe/free', 'mechanicalLock/none/free'] },
  },
  {
    opening: 'storage room',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, roomUse: 'storage', occupancyGroup: 'S-1', occupantLoad: 2 },
    want: { state: 'settled', release: ['free'], hasNot: specialParts, signed: false },
  },
  {
    opening: 'server room, critical security',
    rests: 'IBC 2021 1010.2; fail secure is the usual choice',
    facts: { ...office, roomUse: 'serverRoom', securityNeed: 'critical', occupantLoad: 3 },
    want: {
      state: 'settled',
      family: ['lock', 'strike'],
      failMode: ['secure'],
      release: ['free'],
      never: unlawful,
      signed: false,
    },
  },
  {
    opening: 'server room with readers on both sides: the inside one only records',
    rests: 'IBC 2021 1010.2.10',
    facts: { ...office, roomUse: 'serverRoom', readerSides: 'recordOut', securityNeed: 'high' },
    want: {
      state: 'settled',
      release: ['free'],
      has: ['readerInside'],
      never: ['mortiseLock/secure/credentialOut', 'magnet/safe/credentialOut'],
      signed: false,
    },
  },
  {
    opening: 'cash room: value locks nobody in',
    rests: 'IBC 2021 1010.2; OSHA 1910.36(d)',
    facts: { ...office, roomUse: 'cashRoom', securityNeed: 'critical' },
    want: { state: 'settled', release: ['free'], never: unlawful, signed: false },
  },
  {
    opening: 'office whose egress role nobody entered',
    rests: 'IBC 2021 1010.2: every door provided for egress',
    facts: { ...office, egressRole: undefined },
    want: { release: ['free'], signed: true },
  },
  {
    opening: 'door with neither power nor path for a cable',
    rests: 'physics',
    facts: { ...office, powerAtDoor: false, cablePath: false },
    want: {
      state: 'settled',
      family: ['battery'],
      never: ['mortiseLock/secure/free', 'strikeMortise/secure/free', 'magnet/safe/sensor'],
    },
  },
  {
    opening: 'wood door in a wood frame, bored latch',
    rests: 'trade practice',
    facts: {
      ...office,
      leafMaterial: 'woodSolidCore',
      frameMaterial: 'wood',
      latch: 'bored',
      strikePrep: 'residential',
      leafRaceway: false,
    },
    want: { state: 'settled', family: plain, release: ['free'], signed: false },
  },
  {
    opening: 'latch and separate deadbolt on an office door: one motion',
    rests: 'IBC 2021 1010.2.1',
    facts: {
      ...office,
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'deadboltPlusLatch',
      workStatus: 'altered',
    },
    want: {
      never: ['strikeCylindrical/secure/free', 'magnet/safe/sensor', 'boltMotor/safe/sensor'],
      signed: true,
    },
  },
  {
    opening: 'lever at 52 in: it comes down, and no magnet takes its place',
    rests: 'IBC 2021 1010.2.3; 2010 ADA Standards 404.2.7',
    facts: { ...office, egressHardwareHeightIn: 52 },
    want: { release: ['free'], may: ['mortiseLock/secure/free', 'strikeMortise/secure/free'] },
  },
  {
    opening: 'double-cylinder lock found on an office door',
    rests: 'IBC 2021 1010.2.4; OSHA 1910.36(d)',
    facts: { ...office, existingArrangement: 'doubleCylinder', workStatus: 'altered' },
    want: { release: ['free'], signed: true, never: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'owner asks for the outside to unlock on fire alarm',
    rests: 'NFPA 72-2019 21.9: only in the direction of egress',
    facts: { ...office, wishUnlockOnAlarm: true },
    want: { release: ['free'], hasNot: ['fireAlarmRelease'] },
  },

  // ── Glass, storefront, public entrances ─────────────────────────────────────────────────────────────
  {
    opening: 'all-glass office entrance, push and pull only',
    rests: 'IBC 2021 1010.2.12 or 1010.2.11: full set, signed',
    facts: { ...office, ...bareGlass, roomUse: 'suiteEntrance' },
    want: {
      state: 'settled',
      family: ['magnet', 'bolt', 'exitDevice', 'battery'],
      release: ['sensor', 'doorSwitch', 'free'],
      never: [
        'magnet/safe/buttonOnly',
        'glassPatchLock/secure/sensor',
        'glassPatchLock/safe/none',
        'strikeMortise/secure/free',
      ],
    },
  },
  {
    opening: 'the same entrance in an assembly of 120, IBC 2024: no sensor',
    rests: 'IBC 2024 1010.2.8 and 1010.2.11 (secondary)',
    facts: { ...office, ...bareGlass, ...hall, mainDoor: true, egressRole: 'exteriorExit', exterior: true },
    basis: ibc2024,
    want: { never: ['magnet/safe/sensor', 'shearMagnet/safe/sensor', 'glassPatchLock/safe/sensor'] },
  },
  {
    opening: 'storefront office entrance with a deadlatch',
    rests: 'trade practice; IBC 2021 1010.2',
    facts: { ...office, ...storefront, roomUse: 'suiteEntrance' },
    want: {
      state: 'settled',
      family: ['strike', 'lock', 'battery'],
      release: ['free'],
      never: ['mortiseLock/secure/free', 'cylindricalLock/secure/free'],
      signed: false,
    },
  },
  {
    opening: 'storefront with a hookbolt: no strike frees it',
    rests: 'trade practice; IBC 2021 1010.2.1',
    facts: { ...office, ...storefront, latch: 'hookbolt', roomUse: 'suiteEntrance' },
    want: { never: ['strikeCylindrical/secure/free', 'strikeRim/secure/free'] },
  },
  {
    opening: 'shop entrance, 200 people, key lock on the main door',
    rests: 'IBC 2021 1010.2.4 item 3',
    facts: {
      ...office,
      ...storefront,
      occupancyGroup: 'M',
      roomUse: 'lobby',
      occupantLoad: 200,
      mainDoor: true,
      publicEntrance: true,
      readerSides: 'none',
      wishKeyLock: true,
    },
    want: { may: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'side door of the same shop: no key lock',
    rests: 'IBC 2021 1010.2.4 item 3 names the main door only',
    facts: {
      ...office,
      ...storefront,
      occupancyGroup: 'M',
      roomUse: 'other',
      occupantLoad: 200,
      readerSides: 'none',
      wishKeyLock: true,
    },
    want: { never: ['mechanicalLock/none/keyInside'], release: ['free'] },
  },
  {
    opening: 'automatic sliding entrance with breakaway',
    rests: 'IBC 2021 1010.3.2',
    facts: {
      ...office,
      doorType: 'slidingAutomatic',
      leafMaterial: 'aluminiumNarrow',
      frameMaterial: 'aluminium',
      hinges: 'track',
      latch: 'operatorLock',
      breakaway: true,
      operator: 'fullPower',
      egressRole: 'exteriorExit',
      exterior: true,
      mainDoor: true,
      publicEntrance: true,
      occupancyGroup: 'M',
      occupantLoad: 400,
    },
    want: {
      signed: true,
      has: ['acceptanceTest'],
      never: ['magnet/safe/none', 'boltSolenoid/secure/sensor'],
    },
  },
  {
    opening: 'hand-slid door for 30 people',
    rests: 'IBC 2021 1010.1.2',
    facts: {
      ...office,
      doorType: 'slidingManual',
      hinges: 'track',
      frameMaterial: 'track',
      occupantLoad: 30,
    },
    want: { state: 'none' },
  },
  {
    opening: 'magnet armed after hours in place of a key lock',
    rests: 'IBC 2021 1010.2.4 and 1010.2.12',
    facts: { ...office, ...bareGlass, wishAfterHoursMagnet: true, mainDoor: true },
    want: {
      never: ['magnet/safe/buttonOnly', 'magnet/safe/alarmOnly', 'shearMagnet/safe/none'],
    },
  },
  {
    opening: 'main entrance with panic bars and an operator',
    rests: 'trade practice: the latch must be drawn before the operator drives',
    facts: {
      ...office,
      ...bar,
      operator: 'lowEnergy',
      egressRole: 'exteriorExit',
      exterior: true,
      mainDoor: true,
    },
    want: {
      state: 'settled',
      family: ['exitDevice', 'strike'],
      release: ['free'],
      has: ['operatorSequence'],
      never: ['exitTrim/secure/free', 'exitTrim/safe/free'],
    },
  },
  {
    opening: 'office door with operator and mortise lock: the latch must be freed',
    rests: 'trade practice',
    facts: { ...office, operator: 'lowEnergy' },
    want: {
      state: 'settled',
      family: ['strike'],
      never: ['mortiseLock/secure/free', 'batteryLock/asIs/free'],
    },
  },

  // ── Electrical, mechanical and hazardous rooms ──────────────────────────────────────────────────────
  {
    opening: 'electrical room, 800 A, door 10 ft from the gear, lever lock',
    rests: 'NEC 2020 110.26(C)(3); IBC 2021 1010.2.9.2',
    facts: {
      ...office,
      roomUse: 'electricalRoom',
      equipmentAmps: 800,
      overcurrentDevices: true,
      doorToWorkingSpaceFt: 10,
      equipmentWidthFt: 4,
    },
    want: {
      state: 'none',
      never: [
        'mortiseLock/secure/free',
        'strikeMortise/secure/free',
        'batteryLock/asIs/free',
        'magnet/safe/sensor',
      ],
    },
  },
  {
    opening: 'electrical room, 800 A, with a bar',
    rests: 'NEC 2020 110.26(C)(3)',
    facts: {
      ...office,
      ...bar,
      roomUse: 'electricalRoom',
      equipmentAmps: 800,
      overcurrentDevices: true,
      doorToWorkingSpaceFt: 10,
    },
    want: {
      state: 'settled',
      family: ['exitDevice', 'strike', 'battery'],
      release: ['free'],
      never: ['magnet/safe/sensor', 'boltMotor/safe/sensor'],
      signed: false,
    },
  },
  {
    opening: 'electrical room, 400 A',
    rests: 'NEC 2020 110.26(C)(3): below 800 A',
    facts: {
      ...office,
      roomUse: 'electricalRoom',
      equipmentAmps: 400,
      equipmentVolts: 480,
      overcurrentDevices: true,
      doorToWorkingSpaceFt: 5,
    },
    want: {
      state: 'settled',
      release: ['free'],
      may: ['mortiseLock/secure/free'],
      hasNot: ['panicHardware'],
    },
  },
  {
    opening: 'electrical room, 1,000 A, IBC 2018 without NEC: no panic hardware below 1,200 A',
    rests: 'IBC 2018 1010.1.10',
    facts: {
      ...office,
      roomUse: 'electricalRoom',
      equipmentAmps: 1000,
      equipmentWidthFt: 8,
      overcurrentDevices: true,
      doorToWorkingSpaceFt: 5,
    },
    basis: { ibc: 2018, nec: null },
    want: { state: 'settled', may: ['mortiseLock/secure/free'], hasNot: ['panicHardware'] },
  },
  {
    opening: 'electrical room of which nobody read the amperes',
    rests: 'NEC 2020 110.26(C)(3)',
    facts: {
      ...office,
      roomUse: 'electricalRoom',
      equipmentAmps: undefined,
      equipmentVolts: undefined,
      overcurrentDevices: true,
      doorToWorkingSpaceFt: 10,
    },
    want: { state: 'open' },
  },
  {
    opening: 'battery room with a bar',
    rests: 'IBC 2021 1010.2.9.2; NEC 2020 480.10',
    facts: { ...office, ...bar, roomUse: 'batteryRoom' },
    want: { state: 'settled', family: ['exitDevice', 'strike', 'battery'], release: ['free'] },
  },
  {
    opening: 'battery room with a lever lock',
    rests: 'IBC 2021 1010.2.9.2',
    facts: { ...office, roomUse: 'batteryRoom' },
    want: { never: ['mortiseLock/secure/free', 'strikeMortise/secure/free', 'mechanicalLock/none/free'] },
  },
  {
    opening: 'refrigeration machinery room, 1,500 ft², lever lock',
    rests: 'IBC 2021 1010.2.9 and 1006.2.2.2',
    facts: {
      ...office,
      roomUse: 'refrigerationMachinery',
      roomAreaFt2: 1500,
      occupancyGroup: 'F-1',
      occupantLoad: 5,
    },
    want: {
      never: [
        'mortiseLock/secure/free',
        'strikeMortise/secure/free',
        'magnet/safe/sensor',
        'mechanicalLock/none/free',
      ],
    },
  },
  {
    opening: 'elevator machine room',
    rests: 'ASME A17.1 (secondary)',
    facts: { ...office, roomUse: 'elevatorMachineRoom', occupantLoad: 1 },
    want: {
      state: 'settled',
      failMode: ['secure', 'asIs'],
      release: ['free'],
      has: ['storeroomLockset'],
      never: ['mortiseLock/safe/free', 'magnet/safe/sensor', 'latchRetractionMotor/secure/free'],
    },
  },
  {
    opening: 'boiler room in a rated wall, nothing closes it',
    rests: 'IBC 2021 509 and 716.2.6.1',
    facts: { ...office, ...rated(45, 60, 'fireBarrier'), roomUse: 'hazardousRoom', closing: 'none' },
    want: { has: ['closer'], never: ['strikeMortise/safe/free'] },
  },
  {
    opening: 'laboratory in Group H-3 for 6 people, lever lock',
    rests: 'IBC 2021 1010.2.9: any load',
    facts: { ...office, roomUse: 'laboratory', occupancyGroup: 'H-3', occupantLoad: 6 },
    want: {
      state: 'none',
      never: [
        'mortiseLock/secure/free',
        'magnet/safe/sensor',
        'magnet/safe/doorSwitch',
        'boltMotor/safe/doorSwitch',
        'strikeMortise/secure/free',
      ],
    },
  },
  {
    opening: 'laboratory in Group H-3 with a bar, delay wished',
    rests: 'IBC 2021 1010.2.13: not in Group H',
    facts: { ...office, ...bar, ...delayWish, roomUse: 'laboratory', occupancyGroup: 'H-3', occupantLoad: 6 },
    want: { release: ['free'], never: ['delayedExitDevice/safe/delayed', 'delayedMagnet/safe/delayed'] },
  },
  {
    opening: 'laboratory in Group B',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, roomUse: 'laboratory' },
    want: { state: 'settled', release: ['free'], signed: false },
  },
  {
    opening: 'warehouse man door, exterior, 40 people',
    rests: 'IBC 2021 1010.2',
    facts: {
      ...office,
      egressRole: 'exteriorExit',
      exterior: true,
      roomUse: 'storage',
      occupancyGroup: 'S-1',
      occupantLoad: 40,
    },
    want: { state: 'settled', release: ['free'], has: ['weatherRated'], signed: false },
  },
  {
    opening: 'coiling door as the only way out of a warehouse for 40',
    rests: 'IBC 2021 1010.1.2',
    facts: {
      ...office,
      doorType: 'overhead',
      leafMaterial: 'rollingSteel',
      frameMaterial: 'track',
      hinges: 'track',
      latch: 'operatorLock',
      operator: 'fullPower',
      egressRole: 'exteriorExit',
      exterior: true,
      roomUse: 'storage',
      occupancyGroup: 'S-1',
      occupantLoad: 40,
    },
    want: { state: 'none' },
  },

  // ── Stairs, roof, discharge ─────────────────────────────────────────────────────────────────────────
  {
    opening: 'stair door, three stories, stair side locked, IBC 2021',
    rests: 'IBC 2021 1010.2.7',
    facts: { ...office, ...stair },
    want: {
      state: 'settled',
      family: ['lock'],
      failMode: ['safe'],
      release: ['stairReentry'],
      has: ['stairReleaseTogether'],
      hasNot: ['stairAlarmRelease', 'fireAlarmRelease'],
      never: [
        'strikeMortise/secure/free',
        'strikeMortise/safe/free',
        'mortiseLock/secure/free',
        'batteryLock/asIs/free',
        'mechanicalLock/none/free',
        'magnet/safe/sensor',
      ],
      signed: true,
    },
  },
  {
    opening: 'the same with a bar on the floor side',
    rests: 'IBC 2021 1010.2.7; NFPA 80 6.4.4',
    facts: { ...office, ...stair, ...ratedBar },
    want: {
      state: 'settled',
      family: ['exitDevice'],
      failMode: ['safe'],
      release: ['stairReentry'],
      has: ['stairReleaseTogether'],
      never: ['latchRetractionMotor/secure/free', 'strikeRim/secure/free', 'exitTrim/secure/free'],
      signed: true,
    },
  },
  {
    opening: 'stair door, three stories, IBC 2024: alarm and power loss too',
    rests: 'IBC 2024 1010.2.6 (secondary)',
    facts: { ...office, ...stair },
    basis: ibc2024,
    want: {
      state: 'settled',
      release: ['stairReentry'],
      has: ['stairReleaseTogether', 'stairAlarmRelease', 'powerLossRelease'],
      signed: true,
    },
  },
  {
    opening: 'stair door, five stories, IBC 2018: no story limit',
    rests: 'IBC 2018 1010.1.9.12',
    facts: {
      ...office,
      ...stair,
      stairStories: 5,
      storiesAboveGrade: 5,
      ...rated(90, 120, 'exitEnclosure'),
      cityKeepsFourStoryLimit: false,
    },
    basis: ibc2018,
    want: { state: 'settled', release: ['stairReentry'], has: ['stairReleaseTogether'], signed: true },
  },
  {
    opening: 'stair door, five stories, the city keeps the four-story limit',
    rests: 'IBC 2015 1010.1.9.11 as kept by a local text',
    facts: {
      ...office,
      ...stair,
      stairStories: 5,
      storiesAboveGrade: 5,
      ...rated(90, 120, 'exitEnclosure'),
      cityKeepsFourStoryLimit: true,
    },
    basis: ibc2018,
    want: { never: ['mortiseLock/safe/stairReentry', 'mortiseLock/secure/free'], signed: true },
  },
  {
    opening: 'stair door of a 20-story tower',
    rests: 'IBC 2021 403.5.3 and 403.5.3.1',
    facts: { ...office, ...tower },
    want: {
      state: 'settled',
      failMode: ['safe'],
      release: ['stairReentry'],
      has: ['stairReleaseTogether', 'stairPhones'],
      signed: true,
    },
  },
  {
    opening: 'stair door of a tower, to be released from the main entrance only',
    rests: 'IBC 2021 403.5.3',
    facts: { ...office, ...tower, stairReleasePoint: 'mainEntrance' },
    want: { state: 'refused' },
  },
  {
    opening: 'stair door, four stories, NFPA 101 alone',
    rests: 'NFPA 101 7.2.1.5.8 (secondary)',
    facts: { ...office, ...stair, stairStories: 4, storiesAboveGrade: 4, ...rated(90, 120, 'exitEnclosure') },
    basis: nfpaOnly,
    want: { state: 'settled', may: ['mortiseLock/secure/free'], never: ['strikeMortise/safe/free'] },
  },
  {
    opening: 'stair door, five stories, NFPA 101 alone',
    rests: 'NFPA 101 7.2.1.5.8 (secondary)',
    facts: { ...office, ...stair, stairStories: 5, storiesAboveGrade: 5, ...rated(90, 120, 'exitEnclosure') },
    basis: nfpaOnly,
    want: {
      state: 'settled',
      release: ['stairReentry'],
      has: ['stairAlarmRelease'],
      never: ['mortiseLock/secure/free', 'mechanicalLock/none/free'],
      signed: true,
    },
  },
  {
    opening: 'stair door, both sides stay open, no reader',
    rests: 'IBC 2021 1010.2.7',
    facts: { ...office, ...stair, stairLockWanted: 'none', readerSides: 'none' },
    want: { state: 'settled', family: ['mechanical'], release: ['free'] },
  },
  {
    opening: 'stair door whose stories nobody counted, NFPA 101 alone',
    rests: 'NFPA 101 7.2.1.5.8 (secondary)',
    facts: { ...office, ...stair, stairStories: undefined },
    basis: nfpaOnly,
    want: { never: ['strikeMortise/safe/free'], signed: true },
  },
  {
    opening: 'stair discharge with a bar',
    rests: 'IBC 2021 1010.2.7 exception 1: locked from outside only',
    facts: {
      ...office,
      ...stair,
      ...ratedBar,
      egressRole: 'stairDischarge',
      exterior: true,
      stairLockWanted: undefined,
    },
    want: {
      state: 'settled',
      release: ['free'],
      hasNot: ['fireAlarmRelease', 'stairReleaseTogether'],
      never: ['magnet/safe/none', 'mechanicalLock/none/keyInside'],
    },
  },
  {
    opening: 'roof door, roof not occupied',
    rests: 'IBC 2021 1010.2.4 item 7',
    facts: {
      ...office,
      egressRole: 'roofDoor',
      roofUse: 'unoccupied',
      exterior: true,
      readerSides: 'none',
      roomUse: 'other',
    },
    want: { state: 'settled', family: ['mechanical'] },
  },
  {
    opening: 'roof terrace for 200',
    rests: 'IBC 2021 1010.2.4 item 8',
    facts: {
      ...office,
      egressRole: 'roofDoor',
      roofUse: 'occupied',
      exterior: true,
      roomUse: 'other',
      occupantLoad: 200,
    },
    want: { release: ['free'], signed: true },
  },
  {
    opening: 'the way out leads over the roof',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, egressRole: 'roofDoor', roofUse: 'egressPath', exterior: true, roomUse: 'other' },
    want: { signed: true, never: ['mechanicalLock/none/keyInside', 'magnet/safe/none'] },
  },
  {
    opening: 'horizontal exit used both ways, reader wished',
    rests: 'IBC 2021 1026',
    facts: {
      ...office,
      ...rated(90, 120, 'horizontalExit'),
      egressRole: 'horizontalExit',
      exitDirection: 'both',
      roomUse: 'corridor',
    },
    want: {
      never: ['mortiseLock/secure/free', 'strikeMortise/secure/free', 'magnet/safe/sensor'],
      signed: true,
    },
  },
  {
    opening: 'horizontal exit used one way',
    rests: 'IBC 2021 1026 and 716',
    facts: {
      ...office,
      ...rated(90, 120, 'horizontalExit'),
      egressRole: 'horizontalExit',
      exitDirection: 'towardSecure',
      roomUse: 'corridor',
    },
    want: { state: 'settled', release: ['free'], never: ['strikeMortise/safe/free'], signed: true },
  },

  // ── Elevator lobbies ────────────────────────────────────────────────────────────────────────────────
  {
    opening: 'elevator lobby without a way out, IBC 2021',
    rests: 'IBC 2021 3006.4: access to an exit',
    facts: { ...office, ...lobby },
    want: {
      signed: true,
      never: [
        'magnet/safe/lobby',
        'mortiseLock/safe/lobby',
        'magnet/safe/alarmOnly',
        'strikeMortise/secure/free',
      ],
    },
  },
  {
    opening: 'elevator lobby without a way out, IBC 2024',
    rests: 'IBC 2024 1010.2.14 (secondary)',
    facts: { ...office, ...lobby, leafMaterial: 'hollowMetal' },
    basis: ibc2024,
    want: {
      may: ['mortiseLock/safe/lobby', 'magnet/safe/lobby'],
      never: ['mortiseLock/secure/credentialOut'],
      signed: true,
    },
  },
  {
    opening: 'elevator lobby, IBC 2024, nobody attends',
    rests: 'IBC 2024 1010.2.14 (memory)',
    facts: { ...office, ...lobby, attendedStation: false },
    basis: ibc2024,
    want: { never: ['magnet/safe/lobby', 'mortiseLock/safe/lobby'], signed: true },
  },
  {
    opening: 'elevator lobby with its own stair',
    rests: 'IBC 2021 3006.4 (secondary)',
    facts: { ...office, ...lobby, lobbyHasOtherExit: true },
    want: { state: 'settled', release: ['free'], never: ['magnet/safe/lobby'], signed: false },
  },
  {
    opening: 'fire-service elevator lobby to the stair',
    rests: 'IBC 2021 3007 (memory)',
    facts: { ...office, ...stair, roomUse: 'rescueElevatorLobby' },
    want: {
      release: ['stairReentry'],
      never: ['magnet/safe/sensor', 'mortiseLock/safe/credentialOut'],
      signed: true,
    },
  },
  {
    opening: 'area of refuge, reader wished on the way in',
    rests: 'IBC 2021 1009 (memory)',
    facts: { ...office, ...rated(45, 60, 'fireBarrier'), roomUse: 'areaOfRefuge' },
    want: {
      never: ['mortiseLock/secure/free', 'strikeMortise/secure/free', 'magnet/safe/sensor'],
      signed: true,
    },
  },

  // ── Schools and assembly ────────────────────────────────────────────────────────────────────────────
  {
    opening: 'classroom for 30, lockdown wished',
    rests: 'IBC 2021 1010.2.8',
    facts: { ...office, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 30, wishLockdown: true },
    want: { state: 'settled', release: ['free'], has: ['outsideUnlockKey'], signed: false },
  },
  {
    opening: 'classroom with a barricade device',
    rests: 'IBC 2021 1010.2.8',
    facts: {
      ...office,
      occupancyGroup: 'E',
      roomUse: 'classroom',
      occupantLoad: 30,
      wishLockdown: true,
      barricadeDevice: true,
    },
    want: { signed: true },
  },
  {
    opening: 'classroom for 49, lever lock',
    rests: 'IBC 2021 1010.2.9: from 50',
    facts: { ...office, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 49 },
    want: {
      state: 'settled',
      release: ['free'],
      may: ['mortiseLock/secure/free'],
      hasNot: ['panicHardware'],
    },
  },
  {
    opening: 'classroom for 50, lever lock',
    rests: 'IBC 2021 1010.2.9',
    facts: { ...office, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 50 },
    want: {
      state: 'none',
      never: [
        'magnet/safe/doorSwitch',
        'magnet/safe/sensor',
        'mortiseLock/secure/free',
        'strikeMortise/secure/free',
      ],
    },
  },
  {
    opening: 'classroom for 50 under NFPA 101 alone: from 100',
    rests: 'NFPA 101-2021 7.2.1.7 and 14.2.2.2',
    facts: { ...office, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 50 },
    basis: nfpaOnly,
    want: { may: ['mortiseLock/secure/free'], hasNot: ['panicHardware'] },
  },
  {
    opening: 'classroom for 50 under both books: the lower load governs',
    rests: 'IBC 2021 1010.2.9',
    facts: { ...office, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 50 },
    basis: both,
    want: { state: 'none', never: ['mortiseLock/secure/free'] },
  },
  {
    opening: 'school entrance with a bar',
    rests: 'IBC 2021 1010.2.9',
    facts: {
      ...office,
      ...bar,
      occupancyGroup: 'E',
      roomUse: 'lobby',
      occupantLoad: 400,
      egressRole: 'exteriorExit',
      exterior: true,
      mainDoor: true,
    },
    want: {
      state: 'settled',
      family: ['exitDevice', 'strike'],
      release: ['free'],
      never: ['delayedExitDevice/safe/delayed', 'mechanicalLock/none/keyInside'],
    },
  },
  {
    opening: 'hall main door for 300, key lock wished',
    rests: 'IBC 2021 1010.2.4 item 3: to 300',
    facts: { ...office, ...hall, occupantLoad: 300, mainDoor: true, readerSides: 'none', wishKeyLock: true },
    want: { may: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'hall main door for 301, key lock wished',
    rests: 'IBC 2021 1010.2.4 item 3',
    facts: { ...office, ...hall, occupantLoad: 301, mainDoor: true, readerSides: 'none', wishKeyLock: true },
    want: { never: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'hall main door for 301, key lock wished, NFPA 101 alone: to 500',
    rests: 'NFPA 101-2021 12.2.2.2 (memory)',
    facts: { ...office, ...hall, occupantLoad: 301, mainDoor: true, readerSides: 'none', wishKeyLock: true },
    basis: nfpaOnly,
    want: { may: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'hall side door for 120 with rods, pair',
    rests: 'IBC 2021 1010.2.9; trade practice: a strike frees one point only',
    facts: { ...office, ...rods, ...hall },
    want: {
      state: 'settled',
      family: ['exitDevice', 'battery'],
      release: ['free'],
      never: ['strikeRim/secure/free', 'strikeMortise/secure/free', 'mechanicalLock/none/keyInside'],
    },
  },
  {
    opening: 'hall of which nobody knows the load, lever lock',
    rests: 'IBC 2021 1010.2.9: 50 decides',
    facts: { ...office, ...hall, occupantLoad: undefined },
    want: { state: 'open' },
  },
  {
    opening: 'meeting room for 80 entered as Group B',
    rests: 'IBC 2021 303.1.2: 50 or more is assembly',
    facts: { ...office, roomUse: 'conference', occupantLoad: 80 },
    want: { release: ['free'] },
  },
  {
    opening: 'courtroom side door, delay wished, sprinklered',
    rests: 'IBC 2021 1010.2.13 exception 1',
    facts: { ...office, ...bar, ...delayWish, occupancyGroup: 'A-3', roomUse: 'courtroom', occupantLoad: 60 },
    want: {
      may: ['delayedExitDevice/safe/delayed'],
      has: ['signDelayed15', 'delaySounder', 'detectionRelease'],
      release: ['delayed'],
      signed: true,
    },
  },
  {
    opening: 'courtroom main door, delay wished',
    rests: 'IBC 2021 1010.2.13 exception 1',
    facts: {
      ...office,
      ...bar,
      ...delayWish,
      occupancyGroup: 'A-3',
      roomUse: 'courtroom',
      occupantLoad: 60,
      mainDoor: true,
    },
    want: { never: ['delayedExitDevice/safe/delayed', 'delayedMagnet/safe/delayed'], release: ['free'] },
  },

  // ── Delayed egress elsewhere ────────────────────────────────────────────────────────────────────────
  {
    opening: 'delayed egress in offices, sprinklered',
    rests: 'IBC 2021 1010.2.13 and 1010.2.13.1',
    facts: { ...office, ...bar, ...delayWish, egressRole: 'exteriorExit', exterior: true },
    want: {
      state: 'settled',
      family: ['delayed'],
      release: ['delayed'],
      hasNot: ['doubleMagnet'],
      has: [
        'delaySounder',
        'delayOverride',
        'detectionRelease',
        'powerLossRelease',
        'emergencyLighting',
        'signDelayed15',
      ],
      signed: true,
    },
  },
  {
    opening: 'delayed egress in offices with neither sprinklers nor detection',
    rests: 'IBC 2021 1010.2.13',
    facts: { ...office, ...bar, ...delayWish, sprinklered: false },
    want: { never: ['delayedExitDevice/safe/delayed', 'delayedMagnet/safe/delayed'], release: ['free'] },
  },
  {
    opening: 'delayed egress, sprinklers unknown',
    rests: 'IBC 2021 1010.2.13',
    facts: { ...office, ...bar, ...delayWish, sprinklered: undefined },
    want: { state: 'open' },
  },
  {
    opening: 'delayed egress, occupancy group unknown',
    rests: 'IBC 2021 1010.2.13: the groups are listed',
    facts: { ...office, ...bar, ...delayWish, occupancyGroup: undefined },
    want: { state: 'open' },
  },
  {
    opening: 'delayed egress, a second one on the path',
    rests: 'IBC 2021 1010.2.13.1 item 5',
    facts: { ...office, ...bar, ...delayWish, delayedDoorsOnPath: 1 },
    want: { never: ['delayedExitDevice/safe/delayed'], release: ['free'] },
  },
  {
    opening: 'delayed egress in a restaurant',
    rests: 'IBC 2021 1010.2.13: not in Group A',
    facts: { ...office, ...bar, ...delayWish, occupancyGroup: 'A-2', roomUse: 'kitchen', occupantLoad: 120 },
    want: { never: ['delayedExitDevice/safe/delayed'], release: ['free'] },
  },
  {
    opening: 'delayed egress in a school corridor',
    rests: 'IBC 2021 1010.2.13 exception 2',
    facts: { ...office, ...bar, ...delayWish, occupancyGroup: 'E', roomUse: 'corridor', occupantLoad: 200 },
    want: { never: ['delayedExitDevice/safe/delayed'], release: ['free'] },
  },
  {
    opening: 'delayed egress in a classroom for 30',
    rests: 'IBC 2021 1010.2.13 exception 2',
    facts: { ...office, ...bar, ...delayWish, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 30 },
    want: { may: ['delayedExitDevice/safe/delayed'], signed: true },
  },
  {
    opening: 'two delayed doors in a hospital',
    rests: 'IBC 2021 1010.2.13.1 item 5 exception',
    facts: {
      ...office,
      ...hospital,
      ...bar,
      ...delayWish,
      delayedDoorsOnPath: 1,
      roomUse: 'corridor',
      occupantLoad: 60,
    },
    want: { may: ['delayedExitDevice/safe/delayed'], signed: true },
  },
  {
    opening: 'back door of a shop with a delay, 30 s wished without approval',
    rests: 'IBC 2021 1010.2.13.1 item 4',
    facts: {
      ...office,
      ...bar,
      ...delayWish,
      wishDelay30s: true,
      delay30sApproved: false,
      occupancyGroup: 'M',
    },
    want: { has: ['signDelayed15', 'ahjApproval'], hasNot: ['signDelayed30'], signed: true },
  },

  // ── Health care ─────────────────────────────────────────────────────────────────────────────────────
  {
    opening: 'patient room, corridor door, roller latch',
    rests: 'IBC 2021 407.3.1',
    facts: { ...office, ...hospital, roomUse: 'patientRoom', latch: 'roller', readerSides: 'none' },
    want: { never: ['magnet/safe/sensor', 'boltMotor/safe/sensor', 'strikeMortise/secure/free'] },
  },
  {
    opening: 'patient room, mortise latch, no lock wished',
    rests: 'IBC 2021 407.3.1',
    facts: { ...office, ...hospital, roomUse: 'patientRoom', readerSides: 'none' },
    want: { state: 'settled', family: ['mechanical'], release: ['free'] },
  },
  {
    opening: 'psychiatric unit exit, controlled egress wished',
    rests: 'IBC 2021 1010.2.14 with its exception',
    facts: {
      ...office,
      ...hospital,
      ...controlWish,
      roomUse: 'patientUnit',
      clinicalArea: 'psychiatric',
      clinicalNeed: 'containment',
      egressRole: 'crossCorridor',
    },
    want: {
      release: ['controlled', 'clinical'],
      has: ['staffMeans'],
      signed: true,
      never: ['magnet/safe/credentialOut'],
    },
  },
  {
    opening: 'medical ward, controlled egress wished with a need',
    rests: 'IBC 2021 1010.2.14',
    facts: {
      ...office,
      ...hospital,
      ...controlWish,
      roomUse: 'patientUnit',
      clinicalArea: 'other',
      clinicalNeed: 'containment',
    },
    want: {
      release: ['controlled', 'clinical'],
      signed: true,
      never: ['mortiseLock/secure/credentialOut'],
    },
  },
  {
    opening: 'nursery with a listed child-abduction system',
    rests: 'IBC 2021 1010.2.14 exception 2',
    facts: {
      ...office,
      ...hospital,
      ...controlWish,
      abductionSystem: true,
      roomUse: 'patientUnit',
      clinicalArea: 'nurseryObstetric',
    },
    want: { release: ['controlled'], has: ['staffMeans'], signed: true },
  },
  {
    opening: 'controlled egress wished in an office',
    rests: 'IBC 2021 1010.2.14: I-1 and I-2 only',
    facts: { ...office, ...controlWish },
    want: {
      release: ['free'],
      never: ['magnet/safe/controlled', 'mortiseLock/safe/controlled'],
    },
  },
  {
    opening: 'memory care in I-1, Condition 2',
    rests: 'IBC 2021 1010.2.14',
    facts: {
      ...office,
      ...controlWish,
      occupancyGroup: 'I-1.2',
      roomUse: 'memoryCare',
      clinicalArea: 'cognitive',
      clinicalNeed: 'containment',
    },
    want: { release: ['controlled', 'clinical'], signed: true },
  },
  {
    opening: 'memory care in R-4, delay wished',
    rests: 'IBC 2021 1010.2.13; 1010.2.14 does not reach R-4',
    facts: {
      ...office,
      ...bar,
      ...delayWish,
      occupancyGroup: 'R-4',
      roomUse: 'memoryCare',
      clinicalArea: 'cognitive',
      clinicalNeed: 'containment',
    },
    want: {
      release: ['delayed'],
      never: ['magnet/safe/controlled', 'mechanicalLock/none/clinical'],
      signed: true,
    },
  },
  {
    opening: 'clinical lock under IBC 2018',
    rests: 'IBC 2018 1010.1.9.4 has no such item',
    facts: {
      ...office,
      ...hospital,
      roomUse: 'patientUnit',
      clinicalArea: 'psychiatric',
      clinicalNeed: 'containment',
    },
    basis: ibc2018,
    want: {
      never: ['mortiseLock/secure/clinical', 'mechanicalLock/none/clinical', 'batteryLock/asIs/clinical'],
    },
  },
  {
    opening: 'hospital pharmacy',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, ...hospital, roomUse: 'pharmacy', securityNeed: 'critical', occupantLoad: 8 },
    want: { state: 'settled', release: ['free'], failMode: ['secure', 'asIs'], never: unlawful },
  },
  {
    opening: 'smoke-barrier pair across a hospital corridor',
    rests: 'IBC 2021 709.5',
    facts: {
      ...office,
      ...hospital,
      ...rods,
      ...rated(20, 60, 'smokeBarrier'),
      doorType: 'doubleEgressPair',
      exitHardwareFireListed: true,
      lessBottomRod: false,
      egressRole: 'crossCorridor',
      exitDirection: 'both',
      roomUse: 'corridor',
      readerSides: 'none',
      occupantLoad: 60,
    },
    want: {
      signed: true,
      has: ['smokeHoldOpen'],
      never: ['magnet/safe/none', 'mechanicalLock/none/keyInside'],
    },
  },

  // ── Living ──────────────────────────────────────────────────────────────────────────────────────────
  {
    opening: 'hotel room entrance',
    rests: 'IBC 2021 1010.2.4 item 5; NFPA 80 6.4.4',
    facts: {
      ...office,
      ...rated(20, 60, 'corridor'),
      occupancyGroup: 'R-1',
      roomUse: 'dwellingEntrance',
      unitOccupantLoad: 3,
      occupantLoad: 3,
      powerAtDoor: false,
      cablePath: false,
    },
    want: { state: 'settled', family: ['battery'], release: ['free'], signed: false },
  },
  {
    opening: 'apartment entrance with latch and deadbolt, unit of 6, IBC 2021',
    rests: 'IBC 2021 1010.2.4 item 5: to 10 people',
    facts: {
      ...office,
      ...rated(20, 60, 'corridor'),
      occupancyGroup: 'R-2',
      roomUse: 'dwellingEntrance',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'deadboltPlusLatch',
      workStatus: 'existing',
      framePrepared: true,
      leafPrepared: true,
      unitOccupantLoad: 6,
      unitSingleExit: true,
      occupantLoad: 6,
      readerSides: 'none',
    },
    want: { release: ['free'], signed: false },
  },
  {
    opening: 'apartment entrance with latch and deadbolt, unit of 12, IBC 2021',
    rests: 'IBC 2021 1010.2.4 item 5',
    facts: {
      ...office,
      occupancyGroup: 'R-2',
      roomUse: 'dwellingEntrance',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'deadboltPlusLatch',
      workStatus: 'altered',
      unitOccupantLoad: 12,
      unitSingleExit: true,
      occupantLoad: 12,
    },
    want: { never: ['strikeCylindrical/secure/free'], signed: true },
  },
  {
    opening: 'day care for 30 in I-4',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, occupancyGroup: 'I-4', roomUse: 'dayCare', occupantLoad: 30 },
    want: { state: 'settled', release: ['free'], signed: false },
  },

  // ── Further rooms ───────────────────────────────────────────────────────────────────────────────────
  {
    opening: 'toilet room for several people',
    rests: 'IBC 2021 2902.3.5',
    facts: { ...office, roomUse: 'multiToilet', readerSides: 'none', lockFunction: 'passage' },
    want: { state: 'settled', has: ['noInsideLock'], never: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'single toilet with latch and bolt',
    rests: 'IBC 2021 1010.2.1',
    facts: {
      ...office,
      roomUse: 'singleToilet',
      readerSides: 'none',
      latch: 'boredPlusDeadbolt',
      occupantLoad: 1,
    },
    want: { release: ['free'] },
  },
  {
    opening: 'holding cell',
    rests: 'IBC 2021 408 and 1010.2.15: never by a schedule',
    facts: { ...office, occupancyGroup: 'I-3', roomUse: 'detention', securityNeed: 'critical' },
    want: { state: 'referred', signed: true },
  },
  {
    opening: 'safe room meant to be locked on people',
    rests: 'no section covers it',
    facts: { ...office, roomUse: 'safeRoom' },
    want: { state: 'referred', signed: true },
  },
  {
    opening: 'storm shelter whose listing nobody has seen',
    rests: 'ICC 500; IBC 2021 423',
    facts: { ...office, roomUse: 'stormShelter', occupantLoad: 30 },
    want: { state: 'referred' },
  },
  {
    opening: 'storm shelter',
    rests: 'ICC 500; IBC 2021 423',
    facts: {
      ...office,
      roomUse: 'stormShelter',
      shelterListingSeen: true,
      readerSides: 'none',
      occupantLoad: 30,
    },
    want: {
      has: ['testedShelterAssembly'],
      never: ['strikeMortise/safe/free', 'magnet/safe/sensor'],
      signed: true,
    },
  },
  {
    opening: 'control vestibule whose leaf holds people in',
    rests: 'IBC 2021 1010.2: no such arrangement outside detention',
    facts: { ...office, wishInterlock: true, interlockHoldsEgress: true },
    want: { release: ['free'], never: ['magnet/safe/sensor', 'boltMotor/safe/sensor'], signed: true },
  },
  {
    opening: 'control vestibule that interlocks entry only',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, wishInterlock: true, interlockHoldsEgress: false },
    want: { state: 'settled', release: ['free'], signed: true },
  },
  {
    opening: 'cable closet that nobody can enter',
    rests: 'IBC 2021 1010.2; a reviewer agrees first',
    facts: { ...office, egressRole: 'noOccupiedSpace', roomUse: 'equipment', occupantLoad: 0 },
    want: { may: ['mortiseLock/secure/free'] },
  },

  // ── Gates, parking, grilles ─────────────────────────────────────────────────────────────────────────
  {
    opening: 'swinging gate on the way to the street',
    rests: 'IBC 2021 1010.4',
    facts: {
      ...office,
      doorType: 'gateSwing',
      leafMaterial: 'gateFramed',
      frameMaterial: 'posts',
      strikePrep: 'none',
      latch: 'gateLock',
      egressRole: 'dischargeGate',
      exterior: true,
      roomUse: 'site',
      safeDispersalArea: false,
      gateSupervised: false,
      poolBarrierGate: false,
      occupantLoad: 40,
    },
    want: {
      family: ['lock', 'strike', 'exitDevice', 'battery'],
      release: ['free'],
      signed: true,
      never: ['gateLock/secure/keyInside', 'magnet/safe/buttonOnly'],
    },
  },
  {
    opening: 'sliding vehicle gate as the way out of a yard for 30',
    rests: 'IBC 2021 1010.1.2 and 1010.4',
    facts: {
      ...office,
      doorType: 'gateSlide',
      leafMaterial: 'gateFramed',
      frameMaterial: 'posts',
      hinges: 'track',
      latch: 'operatorLock',
      operator: 'fullPower',
      egressRole: 'dischargeGate',
      exterior: true,
      roomUse: 'parking',
      occupancyGroup: 'S-2',
      safeDispersalArea: false,
      occupantLoad: 30,
    },
    want: { state: 'none', signed: true },
  },
  {
    opening: 'sliding vehicle gate that nobody leaves by on foot',
    rests: 'IBC 2021 1010.2; a reviewer agrees',
    facts: {
      ...office,
      doorType: 'gateSlide',
      leafMaterial: 'gateFramed',
      frameMaterial: 'posts',
      hinges: 'track',
      latch: 'operatorLock',
      operator: 'fullPower',
      egressRole: 'noOccupiedSpace',
      exterior: true,
      roomUse: 'parking',
      occupancyGroup: 'S-2',
      occupantLoad: 0,
    },
    want: { signed: true, family: ['operator'] },
  },
  {
    opening: 'parking stair lobby door',
    rests: 'IBC 2021 1010.2',
    facts: {
      ...office,
      roomUse: 'parking',
      occupancyGroup: 'S-2',
      occupantLoad: 80,
      ...rated(45, 60, 'fireBarrier'),
    },
    want: { state: 'settled', release: ['free'], never: ['strikeMortise/safe/free'], signed: false },
  },
  {
    opening: 'security grille at the main exit of a shop',
    rests: 'IBC 2021 1010.3.4',
    facts: {
      ...office,
      doorType: 'grille',
      leafMaterial: 'rollingSteel',
      frameMaterial: 'track',
      hinges: 'track',
      latch: 'operatorLock',
      operator: 'fullPower',
      occupancyGroup: 'M',
      roomUse: 'lobby',
      mainDoor: true,
      barriersOverHalf: false,
      occupantLoad: 100,
    },
    want: { has: ['fullOpenMeans'], signed: true },
  },
  {
    opening: 'security grille across the exit of a hall',
    rests: 'IBC 2021 1010.3.4',
    facts: {
      ...office,
      ...hall,
      doorType: 'grille',
      leafMaterial: 'rollingSteel',
      frameMaterial: 'track',
      hinges: 'track',
      latch: 'operatorLock',
      mainDoor: true,
    },
    want: { state: 'none' },
  },

  // ── Pairs ───────────────────────────────────────────────────────────────────────────────────────────
  {
    opening: 'storage pair with hand bolts, unrated',
    rests: 'IBC 2021 1010.2.5 item 2',
    facts: { ...office, ...pair, roomUse: 'storage', occupancyGroup: 'S-1', occupantLoad: 3 },
    want: { release: ['free'], hasNot: ['automaticFlushBolts'], signed: false },
  },
  {
    opening: 'rated pair with hand bolts in a corridor',
    rests: 'NFPA 80 6.4.4.5.1',
    facts: { ...office, ...pair, ...rated(45, 60, 'fireBarrier'), activeCouldCloseFirst: true },
    want: { has: ['automaticFlushBolts', 'coordinator'] },
  },
  {
    opening: 'business pair with hand bolts, 80 people, leaf needed for width',
    rests: 'IBC 2021 1010.2.5',
    facts: { ...office, ...pair, occupantLoad: 80, inactiveNeededForCapacity: true },
    want: { has: ['automaticFlushBolts'] },
  },
  {
    opening: 'rated pair with rods and no bottom rod',
    rests: 'fire listing of rod devices (secondary)',
    facts: {
      ...office,
      ...rods,
      ...rated(90, 120, 'fireBarrier'),
      exitHardwareFireListed: true,
      lessBottomRod: true,
    },
    want: { family: ['exitDevice', 'battery'], has: ['auxiliaryFirePin', 'fireExitHardware'] },
  },

  // ── Existing labeled doors ─────────────────────────────────────────────────────────────────────────
  {
    opening: 'existing 45-minute door, bored, no wire way, frame not prepared',
    rests: 'NFPA 80 5.1.5.2: nothing is cut on site',
    facts: {
      ...office,
      ...rated(45, 60, 'fireBarrier'),
      workStatus: 'existing',
      framePrepared: false,
      leafPrepared: false,
      fieldModificationApproved: false,
      latch: 'bored',
      strikePrep: 'light234',
      leafRaceway: false,
    },
    want: {
      family: ['battery'],
      never: [
        'strikeCylindrical/secure/free',
        'cylindricalLock/secure/free',
        'mortiseLock/secure/free',
        'shearMagnet/safe/sensor',
      ],
    },
  },
  {
    opening: 'the same door with the laboratory’s letter',
    rests: 'NFPA 80 5.1.5.2',
    facts: {
      ...office,
      ...rated(45, 60, 'fireBarrier'),
      workStatus: 'existing',
      framePrepared: false,
      leafPrepared: false,
      fieldModificationApproved: true,
      latch: 'bored',
      strikePrep: 'light234',
      leafRaceway: false,
      powerAtDoor: true,
    },
    want: { may: ['strikeCylindrical/secure/free', 'cylindricalLock/secure/free'] },
  },
  {
    opening: 'existing rated door, latch not yet looked at under the label',
    rests: 'NFPA 80 5.1.5.2',
    facts: {
      ...office,
      ...rated(45, 60, 'fireBarrier'),
      workStatus: 'altered',
      strikePrep: 'light234',
      latch: 'bored',
      leafRaceway: false,
    },
    want: { may: ['batteryLock/asIs/free'] },
  },
  {
    opening: 'unlabeled door in a two-hour wall',
    rests: 'NFPA 80 5.1; IBC 2021 716',
    facts: {
      ...office,
      fireRatingMin: 0,
      wallRatingMin: 120,
      wallKind: 'fireBarrier',
      fireLabel: 'none',
      workStatus: 'existing',
      framePrepared: false,
      leafPrepared: false,
    },
    want: { state: 'refused', signed: true },
  },
  {
    opening: 'door whose fire rating nobody knows: no fail-safe strike on the strength of that',
    rests: 'NFPA 80 6.4.4',
    facts: {
      ...office,
      fireRatingMin: undefined,
      wallRatingMin: undefined,
      wallKind: undefined,
    },
    want: { family: ['strike', 'lock'], failMode: ['secure'], release: ['free'] },
  },
  {
    opening: 'rated door held open by a wedge',
    rests: 'NFPA 80; IBC 2021 716.2.6.6',
    facts: { ...office, ...rated(45, 60, 'fireBarrier'), holdOpen: 'wedge' },
    want: { has: ['smokeHoldOpen'], never: ['strikeMortise/safe/free'] },
  },
  {
    opening: 'magnet wished on nothing: push/pull rated door',
    rests: 'IBC 2021 716.2.6.1',
    facts: { ...office, ...rated(45, 60, 'fireBarrier'), latch: 'pushPull' },
    want: {
      never: ['magnet/safe/sensor', 'boltMotor/safe/sensor', 'strikeMortise/secure/free'],
      has: ['latchingHardware'],
    },
  },
  // ── Doors that people use both ways, leaves that carry no bar ────────────────────────────────────────
  {
    opening: 'door across a corridor that people leave by both ways, reader wished',
    rests: 'IBC 2021 1010.2: openable from the side from which egress is made, here both',
    facts: { ...office, egressRole: 'crossCorridor', exitDirection: 'both', roomUse: 'corridor' },
    want: {
      state: 'none',
      never: ['mortiseLock/secure/free', 'strikeMortise/secure/free', 'magnet/safe/sensor'],
    },
  },
  {
    opening: 'the same without a reader: a passage latch',
    rests: 'IBC 2021 1010.2',
    facts: {
      ...office,
      egressRole: 'crossCorridor',
      exitDirection: 'both',
      roomUse: 'corridor',
      readerSides: 'none',
      lockFunction: 'passage',
    },
    want: { state: 'settled', family: ['mechanical'], release: ['free'], signed: false },
  },
  {
    opening: 'the same with a storeroom lock on the leaf: it locks one way out',
    rests: 'IBC 2021 1010.2',
    facts: {
      ...office,
      egressRole: 'crossCorridor',
      exitDirection: 'both',
      roomUse: 'corridor',
      readerSides: 'none',
      lockFunction: 'storeroom',
    },
    want: { family: ['mechanical'], release: ['free'], has: ['passageFunction'], signed: true },
  },
  {
    opening: 'door across a corridor, nobody looked which way people leave',
    rests: 'IBC 2021 1010.2',
    facts: { ...office, egressRole: 'crossCorridor', exitDirection: undefined, roomUse: 'corridor' },
    want: { state: 'open' },
  },
  {
    opening: 'waist-high turnstile: no bar with a switch',
    rests: 'trade practice; IBC 2021 1010.2.11 wants the hardware on the leaf',
    facts: {
      ...office,
      doorType: 'turnstile',
      leafMaterial: undefined,
      frameMaterial: 'none',
      hinges: undefined,
      latch: 'operatorLock',
      barrierHeightIn: 38,
      clearWidthIn: 22,
      barriersOverHalf: false,
      swingDoorBesideFt: 6,
    },
    want: { signed: true, never: ['boltSolenoid/safe/doorSwitch', 'boltMotor/safe/doorSwitch'] },
  },
  {
    opening: 'roof door, roof not occupied, key wished from the roof',
    rests: 'IBC 2021 1010.2.4 item 7',
    facts: {
      ...office,
      egressRole: 'roofDoor',
      roofUse: 'unoccupied',
      exterior: true,
      readerSides: 'none',
      roomUse: 'other',
      wishKeyLock: true,
    },
    want: { may: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'new office door with a strike: the lockset is in the set',
    rests: 'trade practice: a strike is no lock',
    facts: { ...office, leafRaceway: false },
    want: { family: ['strike'], has: ['electricStrike', 'storeroomLockset'] },
  },
  {
    opening: 'new exit door with a bar and electrified trim or strike: the bar is in the set',
    rests: 'trade practice',
    facts: { ...office, ...bar, egressRole: 'exteriorExit', exterior: true },
    want: { family: ['strike', 'exitDevice'], has: ['panicHardware'], hasNot: ['storeroomLockset'] },
  },
  {
    opening: 'exit door with a bar and no reader: no lockset is added',
    rests: 'IBC 2021 1010.2.9: no second lock; trade practice',
    facts: { ...office, ...bar, egressRole: 'exteriorExit', exterior: true, readerSides: 'none' },
    want: { family: ['mechanical'], has: ['panicHardware'], hasNot: ['mechanicalLock'] },
  },
  {
    opening: 'meeting room for 80 entered as Group B must be looked at',
    rests: 'IBC 2021 303.1.2',
    facts: { ...office, roomUse: 'conference', occupantLoad: 80, readerSides: 'none' },
    want: { signed: true },
  },
  ...(['turnstile', 'turnstileFull', 'turnstileSecurity', 'revolving', 'folding'] as const).flatMap(
    (doorType): Row[] => {
      const facts: Surveyed = {
        ...office,
        doorType,
        leafMaterial: undefined,
        frameMaterial: 'none',
        hinges: undefined,
        latch: 'operatorLock',
        barrierHeightIn: 38,
        barriersOverHalf: false,
        swingDoorBesideFt: 6,
        operator: 'fullPower',
      };
      const never = [
        'boltSolenoid/safe/sensor',
        'boltMotor/safe/sensor',
        'boltMotor/secure/doorSwitch',
        'magnet/safe/sensor',
      ];
      const rests = 'trade practice: the lock belongs to the maker’s package';
      return [
        {
          opening: `${doorType} with a reader`,
          rests,
          facts,
          want: { state: 'referred', signed: true, never },
        },
        {
          opening: `${doorType} with set hours`,
          rests,
          facts: { ...facts, readerSides: 'none', wishScheduledUnlock: true },
          want: { state: 'referred', signed: true, never },
        },
        {
          opening: `${doorType} without a reader`,
          rests,
          facts: { ...facts, readerSides: 'none' },
          want: { state: 'settled', family: ['mechanical', 'none'], signed: true, never },
        },
        {
          opening: `${doorType} nobody leaves by, without a reader`,
          rests,
          facts: { ...facts, egressRole: 'sealedOff', readerSides: 'none' },
          want: { family: ['mechanical', 'none'], never },
        },
      ];
    },
  ),
  {
    opening: 'stair door both sides locked in a hospital for children',
    rests: 'IBC 2021 1010.2.7: the way into the stair stays open',
    facts: { ...office, ...hospital, ...stair, stairLockWanted: 'both' },
    want: {
      never: ['mortiseLock/safe/credentialOut', 'magnet/safe/alarmOnly', 'magnet/safe/lobby'],
      signed: true,
    },
  },
];

function decideRow({ facts, basis }: Row) {
  const known: Record<string, { is: 'known'; value: unknown }> = {};
  for (const [key, value] of Object.entries(facts)) {
    if (value !== undefined) known[key] = { is: 'known', value };
  }
  const project = { ...newProject('p', 'Consultant'), basis: { ...defaultBasis, ...basis } };
  const opening = { ...newOpening('o', '101'), facts: known as Facts };
  return decide(project, opening);
}

/** Every difference between the answer given and the one a consultant gives, in words. */
function differences(row: Row): readonly string[] {
  const { want } = row;
  const decision = decideRow(row);
  const found: string[] = [];
  const lead = decision.chosen?.candidate;
  const ruledOut = new Map(
    decision.rejected.map((one) => [one.candidate.id, one.because.map((step) => step.rule.id).join(' ')]),
  );
  const parts = partsOf(decision).map((part) => part.item);
  const must = signOffReasons(decision).filter((reason) => reason.grade === 'must');
  if (want.state && decision.state !== want.state) {
    const why = [...decision.findings, ...decision.refers].map((step) => step.rule.id);
    found.push(`state ${decision.state} instead of ${want.state} (${why.join(' ')})`);
  }
  if (want.family && !(lead && want.family.includes(lead.device.family)))
    found.push(`leads with ${lead?.id}`);
  if (want.release && !(lead && want.release.includes(lead.release))) found.push(`release of ${lead?.id}`);
  if (want.failMode && !(lead && want.failMode.includes(lead.failMode)))
    found.push(`fail mode of ${lead?.id}`);
  for (const item of want.has ?? []) if (!parts.includes(item)) found.push(`lacks ${item}`);
  for (const item of want.hasNot ?? []) if (parts.includes(item)) found.push(`has ${item}`);
  for (const id of [...(want.never ?? []), ...(want.may ?? [])]) {
    if (!candidateById(id)) found.push(`there is no candidate ${id}`);
  }
  for (const id of want.never ?? []) if (!ruledOut.has(id)) found.push(`${id} is not ruled out`);
  for (const id of want.may ?? [])
    if (ruledOut.has(id)) found.push(`${id} is ruled out by ${ruledOut.get(id)}`);
  if (want.signed === true && must.length === 0) found.push('nobody must sign');
  if (want.signed === false && must.length > 0) {
    found.push(`must be signed: ${must.map((reason) => reason.ruleId ?? reason.sentence).join(', ')}`);
  }
  return found;
}

describe('what a consultant would answer', () => {
  it.each(rows.map((row) => [`${row.opening} (${row.rests})`, row] as const))('%s', (_name, row) => {
    expect(differences(row)).toEqual([]);
  });

  it('names what every answer rests on, and every opening once', () => {
    expect(rows.length).toBeGreaterThanOrEqual(70);
    expect(new Set(rows.map((row) => row.opening)).size).toBe(rows.length);
    expect(rows.filter((row) => row.rests.trim() === '')).toEqual([]);
  });
});
