import type { CodeBasis } from '../codes/basis.ts';
import { mayBeLeftBothWays } from '../logic/derived.ts';
import { compile } from '../logic/compile.ts';
import type { Slots } from '../logic/slots.ts';
import { all, any, type Condition, is, isKnown, no, not, over, yes } from '../logic/condition.ts';
import { type Verdict, YES } from '../logic/verdict.ts';
import type { FactKey } from '../model/fields.ts';
import { healthCare } from '../rules/special/conditions.ts';

/** When a question makes sense at all; a key that is not named always does. */
const pair = yes('isPair');
const stair = is('egressRole', 'stairEntry', 'stairDischarge');
const electrical = is(
  'roomUse',
  'electricalRoom',
  'equipment',
  'transformerVault',
  'batteryRoom',
  'modularDataCenter',
);
/** It may stand in any room: where somebody entered it, the rest is asked. */
const largeEquipment = any(electrical, isKnown('equipmentAmps'), isKnown('equipmentVolts'));
const keptIn = any(
  yes('wishControlledEgress'),
  is('clinicalNeed', 'containment', 'securityThreat', 'protection'),
);
const dwelling = is('roomUse', 'dwellingEntrance', 'dwellingBedroom', 'unitBalcony');
const sensorLikely = not(is('readerSides', 'none'));

/** Walls whose doors are fire doors more often than not: a label tells more than the wall does. */
const wallAsksForLabel = is(
  'wallKind',
  'corridor',
  'otherPartition',
  'fireBarrier',
  'exitEnclosure',
  'horizontalExit',
  'fireWall',
  'smokeBarrier',
);

/** Glass to wall or floor: no frame that could be filled, cut or piped. Until that is seen, a frame is asked about. */
const framed = not(all(isKnown('frameMaterial'), is('frameMaterial', 'none')));
const cutForAStrike = all(framed, not(all(isKnown('leafMaterial'), is('leafMaterial', 'glassFrameless'))));

const gasRoom = is(
  'roomUse',
  'serverRoom',
  'modularDataCenter',
  'electricalRoom',
  'transformerVault',
  'batteryRoom',
  'equipment',
);

const relevance: { readonly [K in FactKey]?: Condition } = {
  handing: yes('isSwinging'),
  glassRails: is('leafMaterial', 'glassFrameless'),
  wishGlassBareLook: is('leafMaterial', 'glassFrameless'),
  lessBottomRod: is('latch', 'verticalRods', 'rimPlusRods'),
  exitHardwareFireListed: any(yes('panicPresent'), yes('hasExitDevice')),
  inactiveBolts: pair,
  inactiveNeededForCapacity: pair,
  inactiveHasHardware: pair,
  coordinator: pair,
  activeCouldCloseFirst: pair,
  mullion: pair,
  fireLabel: any(yes('fireRated'), wallAsksForLabel),
  frameLabelMin: yes('fireRated'),
  framePrepared: yes('fireRated'),
  leafPrepared: any(yes('fireRated'), is('workStatus', 'existing', 'altered')),
  inactiveLeafPrepared: all(yes('fireRated'), pair),
  fieldModificationApproved: all(
    yes('fireRated'),
    any(no('framePrepared'), no('leafPrepared'), no('inactiveLeafPrepared'), no('leafRaceway')),
    not(is('workStatus', 'new')),
  ),
  exitDirection: any(mayBeLeftBothWays, is('egressRole', 'stairEntry', 'elevatorLobby')),
  stairLockWanted: is('egressRole', 'stairEntry'),
  stairStories: stair,
  stairReleasePoint: any(yes('stairSideToLock'), yes('floorSideToLock')),
  selectedReentry: stair,
  singleExitStair: stair,
  reentryFloorTraps: is('egressRole', 'stairEntry'),
  roofUse: is('egressRole', 'roofDoor'),
  lobbyHasOtherExit: is('egressRole', 'elevatorLobby'),
  safeDispersalArea: any(is('egressRole', 'dischargeGate', 'egressCourt'), is('doorType', 'gateSwing')),
  poolBarrierGate: is('doorType', 'gateSwing', 'gateSlide'),
  delayedDoorsOnPath: any(keptIn, yes('wishDelayedEgress')),
  wishDelay30s: yes('wishDelayedEgress'),
  wishNoDelaySign: yes('wishDelayedEgress'),
  delay30sApproved: yes('wishDelay30s'),
  wishControlledEgress: any(healthCare, is('roomUse', 'dayCare', 'detention')),
  controlledDoorsOnPath: any(keptIn, all(healthCare, yes('wishDelayedEgress'))),
  interlockHoldsEgress: yes('wishInterlock'),
  seriesSpacingIn: yes('doorsInSeries'),
  equipmentAmps: electrical,
  equipmentVolts: electrical,
  equipmentWidthFt: largeEquipment,
  overcurrentDevices: largeEquipment,
  doorToWorkingSpaceFt: largeEquipment,
  roomAreaFt2: is('roomUse', 'refrigerationMachinery', 'officeTerrace'),
  unitOccupantLoad: dwelling,
  unitSingleExit: dwelling,
  clinicalNeed: healthCare,
  clinicalArea: healthCare,
  abductionSystem: healthCare,
  lockedUnitWatch: any(
    is('clinicalArea', 'nurseryObstetric', 'pediatric', 'emergency'),
    is('clinicalNeed', 'protection'),
  ),
  bedsMoved: is('occupancyGroup', 'I-2'),
  placeOfWorship: yes('groupA'),
  agentFlooded: gasRoom,
  shelterListingSeen: is('roomUse', 'stormShelter'),
  sprinklerKind: yes('sprinklered'),
  staffCanUnlock: healthCare,
  suiteDoor: healthCare,
  breakaway: is('doorType', 'slidingAutomatic'),
  sensorTrippable: sensorLikely,
  frameGrouted: framed,
  strikePrep: cutForAStrike,
  frameConduit: all(framed, any(yes('frameGrouted'), is('wallConstruction', 'masonry'))),
  hardwareForceLbf: yes('accessibleRoute'),
  exitSign: any(is('egressRole', 'sealedOff', 'noOccupiedSpace', 'convenience'), over('occupantLoad', 0)),
};

/** Whether a question makes sense at this opening, as far as is known there. */
export function sense(key: FactKey, slots: Slots, basis: CodeBasis): Verdict {
  const condition = relevance[key];
  return condition === undefined ? YES : compile(condition, basis, 'survey')(slots);
}

/** Whether a question should be put at this opening: it makes sense, or it already has an answer. */
export function isRelevant(key: FactKey, slots: Slots, basis: CodeBasis, hasValue: boolean): boolean {
  return hasValue || sense(key, slots, basis) === YES;
}
