// Six buildings written to break the tool. What is expected was written down before anything was run; beside each
// expectation stand code, edition, section and how sure the writer is of them.
import { describe, expect, it } from 'vitest';
import { differences, type Row, type Surveyed } from './answers.ts';
import {
  bar,
  bareGlass,
  both,
  delayWish,
  ibc2018,
  ibc2024,
  lobby,
  office,
  pair,
  rated,
  ratedBar,
  storefront,
  tower,
} from './given.ts';

const levers = [
  'mortiseLock/secure/free',
  'cylindricalLock/secure/free',
  'strikeMortise/secure/free',
  'batteryLock/asIs/free',
  'mechanicalLock/none/free',
] as const;
const delays = ['delayedExitDevice/safe/delayed', 'delayedMagnet/safe/delayed'] as const;
const alarmTricks = ['magnet/safe/alarmOnly', 'magnet/safe/buttonOnly', 'magnet/safe/credentialOut'] as const;
const strikesOpen = ['strikeMortise/safe/free', 'strikeMortise/secure/none'] as const;

/** Under NFPA 13 throughout unless a row says otherwise. */
const base: Surveyed = { ...office, sprinklerKind: 'nfpa13', buildingOccupantLoad: 300, standbyHours: 4 };

// ── An office tower of 22 stories with re-entry stairs ────────────────────────────────────────────────────────
const high: Surveyed = {
  ...base,
  highRise: true,
  storiesAboveGrade: 22,
  fireCommandCenter: true,
  voiceAlarm: true,
  buildingOccupantLoad: 1800,
};
const stairDoor: Surveyed = { ...high, ...tower, stairStories: 22, storiesAboveGrade: 22 };
const clearGlassLobby: Surveyed = { ...high, ...lobby, ...bareGlass, occupantLoad: 40 };

const officeTower: readonly Row[] = [
  {
    opening: 'stair door with a bar, for which somebody ordered a fail-secure rim strike',
    rests:
      'IBC 2021 403.5.3 and 1010.2.7: unlocked together without unlatching; read for 403.5.3, secondary for 1010.2.7',
    facts: { ...stairDoor, ...ratedBar },
    want: {
      release: ['stairReentry'],
      failMode: ['safe'],
      has: ['stairReleaseTogether'],
      never: ['strikeRim/secure/free', 'strikeRim/safe/free', 'exitTrim/secure/free'],
      signed: true,
    },
  },
  {
    opening: 'stair door that a tenant wants locked on the floor side, with a reader',
    rests: 'IBC 2021 1010.2 and 1010.2.7: the floor side always opens into the stair; memory',
    facts: { ...stairDoor, stairLockWanted: 'floorSide', readerSides: 'both' },
    want: {
      state: 'refused',
      warns: ['stairLockWanted'],
      never: [...alarmTricks, 'magnet/safe/none', 'mechanicalLock/none/keyInside'],
    },
  },
  {
    opening: 'stair of 3 stories in the podium, storeroom lever, no reader and no wire wanted',
    rests: 'IBC 2018 1010.1.9.12: released together from one point, whatever the stories; secondary',
    facts: {
      ...base,
      ...rated(60, 60, 'exitEnclosure'),
      egressRole: 'stairEntry',
      roomUse: 'corridor',
      stairLockWanted: 'stairSide',
      stairStories: 3,
      stairReleasePoint: 'mainEntrance',
      selectedReentry: false,
      singleExitStair: false,
      reentryFloorTraps: false,
      readerSides: 'none',
    },
    basis: ibc2018,
    want: {
      release: ['stairReentry'],
      has: ['stairReleaseTogether'],
      never: ['mechanicalLock/none/free'],
      signed: true,
    },
  },
  {
    opening: 'discharge door of the stair that the rooftop restaurant (A-2, 280) leaves by, delay wanted',
    rests:
      'IBC 2021 1010.2.13: no Group A but courtrooms (secondary); 1010.2.9: panic hardware along the way (disputed beyond the room)',
    facts: {
      ...high,
      ...delayWish,
      ...rated(90, 120, 'exitEnclosure'),
      egressRole: 'stairDischarge',
      roomUse: 'corridor',
      exterior: true,
      occupancyGroup: 'A-2',
      occupantLoad: 280,
    },
    want: { never: [...delays, ...levers], warns: ['wishDelayedEgress'] },
  },
  {
    opening: 'elevator lobby without an exit of its own, 2021, tenant glass door with a magnet',
    rests: 'IBC 2021 3006.4: the lobby has access to an exit; secondary',
    facts: clearGlassLobby,
    want: { never: ['magnet/safe/lobby', 'shearMagnet/safe/lobby', ...alarmTricks], signed: true },
  },
  {
    opening: 'the same lobby under 2024',
    rests:
      'IBC 2024 1010.2.14: alarm, power loss, two-way communication beside the door; secondary, list from memory',
    facts: { ...clearGlassLobby, detectionThroughout: true },
    basis: ibc2024,
    want: {
      release: ['lobby'],
      failMode: ['safe'],
      has: ['twoWayCommunication', 'fireAlarmRelease', 'powerLossRelease'],
      never: alarmTricks,
      signed: true,
    },
  },
  {
    opening: 'data room flooded by a clean agent, critical, nothing closes the door',
    rests: 'NFPA 2001: doors self-closing and always openable from inside; memory',
    facts: {
      ...high,
      roomUse: 'serverRoom',
      agentFlooded: true,
      securityNeed: 'critical',
      closing: 'none',
      occupantLoad: 3,
    },
    want: { release: ['free'], failMode: ['secure'], has: ['closer'], never: alarmTricks },
  },
  {
    opening: 'stair door of which nobody knows from where it is released',
    rests: 'IBC 2021 403.5.3.1: the point of release decides; read',
    facts: { ...stairDoor, stairReleasePoint: undefined },
    want: { states: ['open', 'refused'], asks: ['stairReleasePoint'] },
  },
];

// ── A hospital with a behavioral unit ─────────────────────────────────────────────────────────────────────────
const ward: Surveyed = {
  ...base,
  occupancyGroup: 'I-2',
  staffCanUnlock: true,
  lockedUnitWatch: 'attended',
  bedsMoved: false,
  suiteDoor: 'none',
  oshaWorkplace: false,
};
const kept: Surveyed = {
  ...ward,
  roomUse: 'patientUnit',
  clinicalNeed: 'containment',
  clinicalArea: 'psychiatric',
  wishControlledEgress: true,
  readerSides: 'both',
};
const onCorridor: Surveyed = { ...ward, wallKind: 'smokePartition', roomUse: 'storage' };

const hospitalRows: readonly Row[] = [
  {
    opening: 'exit of the behavioral unit',
    rests: 'IBC 2021 1010.2.14 exception 1 (read for 2018) and NFPA 101 18.2.2.2.5.1 (secondary)',
    facts: kept,
    basis: both,
    want: {
      release: ['controlled', 'clinical'],
      has: ['staffMeans'],
      never: [...alarmTricks, ...strikesOpen.slice(1)],
      signed: true,
    },
  },
  {
    opening: 'the same unit in a building without sprinklers or detection',
    rests: 'IBC 2021 1010.2.14: sprinklers or detection throughout; secondary',
    facts: { ...kept, sprinklered: false, sprinklerKind: undefined, detectionThroughout: false },
    want: {
      never: ['magnet/safe/controlled', 'mortiseLock/safe/controlled', 'boltMotor/safe/controlled'],
      signed: true,
    },
  },
  {
    opening: 'supply closet on the corridor, pair with manual flush bolts',
    rests: 'IBC 2021 407.3.1: corridor doors have positive latching; read',
    facts: { ...onCorridor, ...pair, closing: 'none' },
    want: { has: ['automaticFlushBolts'], never: strikesOpen, saysNot: [/Manual bolts may hold/] },
  },
  {
    opening: 'record room on the corridor, to stand unlocked by day, a strike chosen',
    rests: 'IBC 2021 407.3.1: a released strike does not latch; read',
    facts: { ...onCorridor, wishScheduledUnlock: true },
    want: {
      release: ['free'],
      never: ['strikeMortise/secure/free', 'strikeMortise/safe/free'],
      may: ['mortiseLock/secure/free'],
    },
  },
  {
    opening: 'patient room with a 40 in leaf, beds rolled through, 37-1/2 in clear',
    rests: 'IBC 2021 1010.1.1: 41-1/2 in where beds are moved; read for 2018',
    facts: {
      ...ward,
      wallKind: 'corridor',
      roomUse: 'patientRoom',
      bedsMoved: true,
      leafWidthIn: 40,
      clearWidthIn: 37.5,
      readerSides: 'none',
    },
    want: { warns: ['clearWidthIn'], never: strikesOpen },
  },
  {
    opening: 'mother and baby unit with a delayed door, and another delayed door on the way',
    rests: 'IBC 2021 1010.2.13.1 exception: two in Group I-2, 30 s together; read as quoted',
    facts: {
      ...ward,
      ...bar,
      ...delayWish,
      clinicalArea: 'nurseryObstetric',
      abductionSystem: true,
      delayedDoorsOnPath: 1,
      roomUse: 'patientUnit',
    },
    want: { may: ['delayedExitDevice/safe/delayed'], signed: true },
  },
  {
    opening: 'outpatient clinic (B) with a second delayed door on the way',
    rests: 'IBC 2021 1010.2.13.1: one on a path; read as quoted',
    facts: { ...base, ...bar, ...delayWish, delayedDoorsOnPath: 1 },
    want: { never: delays, release: ['free'] },
  },
  {
    opening: 'hospital pharmacy, keyed from inside wanted',
    rests: 'IBC 2021 1010.2.4 and NFPA 101 7.2.1.5: no key to leave; read',
    facts: { ...ward, roomUse: 'pharmacy', wishKeyLock: true, securityNeed: 'critical' },
    basis: both,
    want: { release: ['free'], never: ['mechanicalLock/none/keyInside', ...alarmTricks] },
  },
  {
    opening: 'seclusion room locked on a patient',
    rests: 'IBC 2021 1010.2.4 item 2: a lock that staff open, where clinical needs require it; read in part',
    facts: { ...kept, roomUse: 'patientRoom', wallKind: 'corridor' },
    want: { release: ['controlled', 'clinical'], never: alarmTricks, signed: true },
  },
  {
    opening: 'suite entrance, a double-acting leaf with a reader',
    rests: 'IBC 2021 407.3.1: it must latch, and a double-acting leaf does not; read',
    facts: {
      ...ward,
      wallKind: 'corridor',
      doorType: 'doubleActing',
      hinges: 'pivot',
      latch: 'pushPull',
      lockFunction: undefined,
      suiteDoor: 'perimeter',
      roomUse: 'suiteEntrance',
    },
    want: {
      states: ['none', 'refused', 'referred'],
      never: ['magnet/safe/sensor', 'shearMagnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch'],
      signed: true,
    },
  },
];

// ── A school ──────────────────────────────────────────────────────────────────────────────────────────────────
const school: Surveyed = { ...base, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 28 };

const schoolRows: readonly Row[] = [
  {
    opening: 'classroom without power at the door, locked from the hall by key, lockdown wanted',
    rests: 'IBC 2021 1010.2.8: lockable against entry, one motion to leave; memory',
    facts: {
      ...school,
      readerSides: 'none',
      lockFunction: 'classroom',
      wishLockdown: true,
      powerAtDoor: false,
      cablePath: false,
      workStatus: 'existing',
    },
    want: { release: ['free'], family: ['mechanical', 'battery'], never: alarmTricks },
  },
  {
    opening: 'the same with a barricade device bought by the parents',
    rests: 'IBC 2021 1010.2.8 and 1010.2.1: no second device against egress; memory',
    facts: {
      ...school,
      readerSides: 'none',
      barricadeDevice: true,
      existingArrangement: 'barricade',
      workStatus: 'existing',
    },
    want: { warns: ['existingArrangement'], signed: true },
  },
  {
    opening: 'gym exit, pair with bars and a chain with a padlock by night',
    rests: 'IBC 2021 1010.2.9: no other lock beside panic hardware; secondary',
    facts: {
      ...school,
      ...pair,
      ...bar,
      inactiveBolts: 'rim',
      inactiveHasHardware: true,
      inactiveNeededForCapacity: true,
      mullion: true,
      existingArrangement: 'padlock',
      workStatus: 'existing',
      occupancyGroup: 'A-4',
      occupantLoad: 300,
      roomUse: 'other',
      egressRole: 'exteriorExit',
      exterior: true,
    },
    want: { release: ['free'], warns: ['existingArrangement'], never: delays, signed: true },
  },
  {
    opening: 'cafeteria entrance for 180, storefront with push and pull, lock wanted',
    rests: 'IBC 2021 1010.2.9: Group A or E of 50, no latch or lock but panic hardware; read',
    facts: {
      ...school,
      ...storefront,
      latch: 'pushPull',
      lockFunction: undefined,
      occupancyGroup: 'A-2',
      occupantLoad: 180,
      roomUse: 'other',
    },
    want: { never: ['narrowStileLatch/secure/free', 'batteryLock/asIs/free', ...alarmTricks] },
  },
  {
    opening: 'inner door of the secure vestibule, delay wanted',
    rests: 'IBC 2021 1010.2.13: Group E only classrooms under 50; secondary',
    facts: {
      ...school,
      ...bar,
      ...delayWish,
      roomUse: 'lobby',
      exitDirection: 'towardSecure',
      occupantLoad: 400,
      doorsInSeries: true,
      seriesSpacingIn: 84,
    },
    want: { never: delays, warns: ['wishDelayedEgress'] },
  },
  {
    opening: 'boiler room in a rated wall, push and pull, nothing closes it, nobody wants a reader',
    rests: 'NFPA 80 6.4.4 and IBC 2021 716.2.6.1: closes and latches; secondary',
    facts: {
      ...school,
      ...rated(45, 60, 'fireBarrier'),
      framePrepared: true,
      leafPrepared: true,
      roomUse: 'hazardousRoom',
      latch: 'pushPull',
      lockFunction: undefined,
      closing: 'none',
      readerSides: 'none',
      workStatus: 'existing',
      occupantLoad: 1,
    },
    want: { has: ['closer', 'latchingHardware'], never: ['noLock/none/free'], signed: true },
  },
  {
    opening: 'room of a school whose load nobody entered, with a lever lock',
    rests: 'IBC 2021 1010.2.9: 50 decides; read',
    facts: { ...school, occupantLoad: undefined },
    want: { state: 'open', asks: ['occupantLoad'] },
  },
];

// ── A church with a hall ──────────────────────────────────────────────────────────────────────────────────────
const church: Surveyed = {
  ...base,
  occupancyGroup: 'A-3',
  roomUse: 'other',
  placeOfWorship: true,
  sprinklered: false,
  sprinklerKind: undefined,
  fireAlarm: false,
};
const nave: Surveyed = {
  ...church,
  ...storefront,
  leafWidthIn: 48,
  clearWidthIn: 45,
  latch: 'hookbolt',
  lockFunction: undefined,
  occupantLoad: 310,
  mainDoor: true,
  publicEntrance: true,
  readerSides: 'none',
  wishKeyLock: true,
};

const churchRows: readonly Row[] = [
  {
    opening: 'main exit of the nave, 310 people, keyed from inside wanted',
    rests: 'IBC 2021 1010.2.4 item 3: places of religious worship, any load; read',
    facts: nave,
    want: {
      release: ['keyInside'],
      saysNot: [/only panic hardware may hold/, /Panic hardware is required here/],
      signed: true,
    },
  },
  {
    opening: 'the same in a concert hall of 320',
    rests: 'IBC 2021 1010.2.4 item 3: Group A of 300 or fewer; read',
    facts: { ...nave, placeOfWorship: false, occupancyGroup: 'A-1', occupantLoad: 320 },
    want: { never: ['mechanicalLock/none/keyInside'] },
  },
  {
    opening: 'side exit of the nave, keyed from inside wanted',
    rests: 'IBC 2021 1010.2.4 item 3: the main door only; read',
    facts: { ...nave, mainDoor: false, publicEntrance: false },
    want: { never: ['mechanicalLock/none/keyInside'], warns: ['wishKeyLock'] },
  },
  {
    opening: 'parish hall of 49 with a lever',
    rests: 'IBC 2021 1010.2.9: from 50; read',
    facts: { ...church, occupantLoad: 49, roomUse: 'conference' },
    want: { state: 'settled', release: ['free'], hasNot: ['panicHardware'], signed: false },
  },
  {
    opening: 'parish hall of 50 with a lever',
    rests: 'IBC 2021 1010.2.9: from 50; read',
    facts: { ...church, occupantLoad: 50, roomUse: 'conference' },
    want: { never: levers },
  },
  {
    opening: 'balcony of 60 with a bar and a sensor magnet, 2024',
    rests: 'IBC 2024 1010.2.11: no sensor where panic hardware is required; secondary',
    facts: { ...church, ...bar, occupantLoad: 60 },
    basis: ibc2024,
    want: { release: ['free'], never: ['magnet/safe/sensor', 'shearMagnet/safe/sensor'] },
  },
  {
    opening: 'gate of the churchyard that 420 people must pass, padlocked',
    rests: 'IBC 2021 1010.4 and 1010.2.9: gates are doors, panic hardware from 50; secondary',
    facts: {
      ...church,
      doorType: 'gateSwing',
      leafMaterial: 'gateFramed',
      frameMaterial: 'posts',
      strikePrep: 'none',
      latch: 'gateLock',
      existingArrangement: 'padlock',
      workStatus: 'altered',
      egressRole: 'dischargeGate',
      exterior: true,
      roomUse: 'site',
      occupantLoad: 420,
      safeDispersalArea: false,
      gateSupervised: false,
      poolBarrierGate: false,
    },
    want: {
      never: ['gateLock/secure/free', 'gateLock/secure/keyInside', 'mechanicalLock/none/free'],
      warns: ['existingArrangement'],
      signed: true,
    },
  },
];

// ── A warehouse with a Group H room ───────────────────────────────────────────────────────────────────────────
const store: Surveyed = { ...base, occupancyGroup: 'S-1', roomUse: 'storage', occupantLoad: 4 };
const solvents: Surveyed = { ...store, occupancyGroup: 'H-3', roomUse: 'other' };
const gear: Surveyed = {
  ...store,
  roomUse: 'electricalRoom',
  equipmentAmps: 800,
  equipmentVolts: 480,
  equipmentWidthFt: 7,
  overcurrentDevices: true,
};

const warehouseRows: readonly Row[] = [
  {
    opening: 'solvent room (H-3) for 4 people, storeroom lever, reader',
    rests: 'IBC 2021 1010.2.9: Group H at any load; read',
    facts: solvents,
    want: { never: [...levers, 'magnet/safe/sensor', 'magnet/safe/doorSwitch', ...delays], signed: true },
  },
  {
    opening: 'the same in a fire barrier with a bar that carries no fire label',
    rests: 'NFPA 80 and IBC 2021 1010.2.9.1, 716.2: fire exit hardware; secondary',
    facts: {
      ...solvents,
      ...bar,
      ...rated(90, 120, 'fireBarrier'),
      exitHardwareFireListed: false,
      framePrepared: true,
      leafPrepared: true,
      workStatus: 'altered',
    },
    want: { has: ['fireExitHardware'], release: ['free'], signed: true },
  },
  {
    opening: 'charging room of the forklifts, lever lock',
    rests: 'IBC 2021 1010.2.9.2: battery rooms whatever the distance; memory, 2024 read',
    facts: { ...store, roomUse: 'batteryRoom' },
    want: { never: levers },
  },
  {
    opening: 'exit with a delay of 30 s wanted that nobody approved',
    rests: 'IBC 2021 1010.2.13: 15 s, 30 s where approved; read',
    facts: {
      ...store,
      ...bar,
      ...delayWish,
      wishDelay30s: true,
      delay30sApproved: false,
      egressRole: 'exteriorExit',
      exterior: true,
      occupantLoad: 60,
    },
    want: { release: ['delayed'], has: ['signDelayed15'], hasNot: ['signDelayed30'], signed: true },
  },
  {
    opening: 'overhead door entered as the exit of the dock for 12 people',
    rests: 'IBC 2021 1010.1.2: side-hinged swinging doors; storage only up to 10 people; memory',
    facts: {
      ...store,
      doorType: 'overhead',
      leafMaterial: 'rollingSteel',
      frameMaterial: 'track',
      hinges: 'track',
      latch: 'operatorLock',
      lockFunction: undefined,
      operator: 'fullPower',
      egressRole: 'exteriorExit',
      exterior: true,
      occupantLoad: 12,
    },
    want: { states: ['none', 'refused', 'referred'] },
  },
  {
    opening: 'refrigeration machinery room of exactly 1,000 ft², nothing closes it',
    rests:
      'IBC 2021 1010.2.9.1 and 1006.2.2.2: larger than 1,000 ft²; secondary. Tight and self-closing at any size',
    facts: {
      ...store,
      occupancyGroup: 'F-1',
      roomUse: 'refrigerationMachinery',
      roomAreaFt2: 1000,
      closing: 'none',
    },
    want: { has: ['closer'], hasNot: ['panicHardware'], may: ['mortiseLock/secure/free'] },
  },
  {
    opening: 'switch room of 800 A, the door exactly 25 ft from the working space',
    rests: 'NEC 2020 110.26(C)(3) and IBC 2021 1010.2.9.2: less than 25 ft; secondary',
    facts: { ...gear, doorToWorkingSpaceFt: 25 },
    want: { may: ['mortiseLock/secure/free'], hasNot: ['panicHardware'] },
  },
  {
    opening: 'chemical store whose group nobody entered',
    rests: 'IBC 2021 1010.2.9: Group H decides at any load; read',
    facts: { ...store, occupancyGroup: undefined, roomUse: 'hazardousRoom' },
    want: { states: ['open', 'refused'], asks: ['occupancyGroup'] },
  },
];

// ── A shop with a day care above it, no alarm, no sprinklers ──────────────────────────────────────────────────
const street: Surveyed = {
  ...base,
  sprinklered: false,
  sprinklerKind: undefined,
  fireAlarm: false,
  attendedStation: false,
  storiesAboveGrade: 2,
  occupancyGroup: 'M',
  roomUse: 'lobby',
  occupantLoad: 60,
  workStatus: 'altered',
};
const children: Surveyed = {
  ...street,
  occupancyGroup: 'I-4',
  roomUse: 'dayCare',
  occupantLoad: 14,
  doorsInSeries: false,
};

const shopRows: readonly Row[] = [
  {
    opening: 'shop entrance, storefront with a hookbolt keyed on both sides',
    rests: 'IBC 2018 1010.1.9.4 item 2: main door of Group M, with its sign; read for 2015',
    facts: {
      ...street,
      ...storefront,
      latch: 'hookbolt',
      lockFunction: undefined,
      mainDoor: true,
      publicEntrance: true,
      readerSides: 'none',
      wishKeyLock: true,
      existingArrangement: 'doubleCylinder',
    },
    basis: ibc2018,
    want: { may: ['mechanicalLock/none/keyInside'], says: [/Key-operated lock on the egress side/] },
  },
  {
    opening: 'back door of the shop with a double-cylinder deadbolt',
    rests: 'IBC 2018 1010.1.9.4: not the main door; read for 2015',
    facts: {
      ...street,
      egressRole: 'exteriorExit',
      exterior: true,
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'doubleCylinder',
      roomUse: 'storage',
      occupantLoad: 8,
    },
    basis: ibc2018,
    want: { warns: ['existingArrangement'], never: ['mechanicalLock/none/keyInside'], signed: true },
  },
  {
    opening: 'day-care exit for 14 children, delay wanted, nothing detects a fire',
    rests: 'IBC 2018 1010.1.9.8: sprinklers or detection throughout; read as quoted',
    facts: { ...children, ...bar, ...delayWish },
    basis: ibc2018,
    want: { never: delays, release: ['free'], warns: ['wishDelayedEgress'] },
  },
  {
    opening: 'the same after a 13R system was built',
    rests: 'IBC 2018 1010.1.9.8 names 903.3.1.1 (NFPA 13) for these groups; read as quoted',
    facts: { ...children, ...bar, ...delayWish, sprinklered: true, sprinklerKind: 'nfpa13R' },
    basis: ibc2018,
    want: { never: delays, warns: ['wishDelayedEgress'] },
  },
  {
    opening: 'stair of the day care, to be locked against the shop, released from nowhere',
    rests: 'IBC 2018 1010.1.9.12: released together from one point; secondary',
    facts: {
      ...children,
      ...rated(60, 60, 'exitEnclosure'),
      framePrepared: true,
      leafPrepared: true,
      egressRole: 'stairEntry',
      roomUse: 'corridor',
      stairLockWanted: 'stairSide',
      stairStories: 2,
      stairReleasePoint: 'none',
      selectedReentry: false,
      singleExitStair: false,
      reentryFloorTraps: false,
    },
    basis: ibc2018,
    want: { never: ['mechanicalLock/none/free', 'mortiseLock/secure/free'], warns: ['stairReleasePoint'] },
  },
  {
    opening: 'street door of the day care, bare glass, a magnet with a button found',
    rests: 'IBC 2018 1010.1.9.9: sensor set, alarm release only where there is an alarm; secondary',
    facts: {
      ...children,
      ...bareGlass,
      egressRole: 'exteriorExit',
      exterior: true,
      mainDoor: true,
      existingArrangement: 'magnetNoSensor',
    },
    basis: ibc2018,
    want: {
      release: ['free', 'doorSwitch', 'sensor'],
      hasNot: ['fireAlarmRelease', 'detectionRelease'],
      never: alarmTricks,
      may: ['magnet/safe/sensor'],
      warns: ['existingArrangement'],
      signed: true,
    },
  },
];

const buildings: readonly (readonly [string, readonly Row[]])[] = [
  ['office tower', officeTower],
  ['hospital', hospitalRows],
  ['school', schoolRows],
  ['church', churchRows],
  ['warehouse', warehouseRows],
  ['shop and day care', shopRows],
];
const rows = buildings.flatMap(([, list]) => list);

describe.each(buildings)('%s', (_building, list) => {
  it.each(list.map((row) => [`${row.opening} (${row.rests})`, row] as const))('%s', (_name, row) => {
    expect(differences(row)).toEqual([]);
  });
});

it('has at least forty openings in six buildings, each with what it rests on', () => {
  expect(buildings.length).toBe(6);
  expect(rows.length).toBeGreaterThanOrEqual(40);
  expect(new Set(rows.map((row) => row.opening)).size).toBe(rows.length);
  expect(rows.filter((row) => row.rests.trim() === '')).toEqual([]);
});
