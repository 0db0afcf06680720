import type { FactValues } from '../../src/domain/model/fields.ts';

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
export const office: FactValues = {
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
export const bar: FactValues = { latch: 'rimExit', panicPresent: true };
export const rated = (
  fireRatingMin: number,
  wallRatingMin: number,
  wallKind: FactValues['wallKind'],
): FactValues =>
  ({ fireRatingMin, wallRatingMin, wallKind, fireLabel: 'seen', frameLabelMin: fireRatingMin }) as FactValues;
export const ratedBar: FactValues = { ...bar, exitHardwareFireListed: true, lessBottomRod: false };
export const bareGlass: FactValues = {
  leafMaterial: 'glassFrameless',
  leafThicknessIn: 0.5,
  frameMaterial: 'none',
  wallConstruction: 'glass',
  strikePrep: 'none',
  latch: 'pushPull',
  glassRails: 'none',
  hinges: 'pivot',
};
export const storefront: FactValues = {
  leafMaterial: 'aluminiumNarrow',
  frameMaterial: 'aluminium',
  strikePrep: 'aluminium458',
  latch: 'deadlatch',
  egressRole: 'exteriorExit',
  exterior: true,
  hinges: 'pivot',
};
export const pair: FactValues = {
  doorType: 'pair',
  inactiveBolts: 'manualFlush',
  inactiveHasHardware: false,
  inactiveNeededForCapacity: false,
  coordinator: false,
  activeCouldCloseFirst: false,
  mullion: false,
};
export const rods: FactValues = {
  doorType: 'pair',
  inactiveBolts: 'rods',
  inactiveHasHardware: true,
  inactiveNeededForCapacity: true,
  latch: 'verticalRods',
  panicPresent: true,
  mullion: false,
  coordinator: false,
};
export const stair: FactValues = {
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
export const tower: FactValues = {
  ...stair,
  ...rated(90, 120, 'exitEnclosure'),
  stairStories: 20,
  storiesAboveGrade: 20,
  highRise: true,
  fireCommandCenter: true,
  voiceAlarm: true,
  stairReleasePoint: 'fireCommandCenter',
};
export const lobby: FactValues = {
  egressRole: 'elevatorLobby',
  roomUse: 'lobby',
  lobbyHasOtherExit: false,
};
export const hall: FactValues = { occupancyGroup: 'A-3', roomUse: 'conference', occupantLoad: 120 };
export const hospital: FactValues = { occupancyGroup: 'I-2', suiteDoor: 'none', staffCanUnlock: true };
export const delayWish: FactValues = { wishDelayedEgress: true, wishDelay30s: false, wishNoDelaySign: false };
export const controlWish: FactValues = {
  wishControlledEgress: true,
  staffCanUnlock: true,
  readerSides: 'both',
  abductionSystem: false,
};

export const ibc2018 = { ibc: 2018 } as const;
export const ibc2024 = { ibc: 2024 } as const;
export const nfpaOnly = { ibc: null, nfpa101: 2021 } as const;
export const both = { ibc: 2021, nfpa101: 2021 } as const;
