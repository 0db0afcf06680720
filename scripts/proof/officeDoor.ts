import { known } from '../../src/domain/testing/facts.ts';
import type { FactKey, FactValues } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';

/**
 * An office building of three stories: its use, protection, power and where its readers usually are stand on file
 * before any door is looked at.
 */
export const officeProject: Project = {
  ...newProject('office', 'Office building'),
  building: {
    occupancyGroup: known('B'),
    powerAtDoor: known(true),
    cablePath: known(true),
    readerSides: known('secure'),
    sprinklered: known(true),
    fireAlarm: known(true),
    detectionThroughout: known(false),
    highRise: known(false),
    storiesAboveGrade: known(3),
    voiceAlarm: known(false),
    fireCommandCenter: known(false),
    attendedStation: known(false),
    basisConfirmed: known(true),
    amendmentsReviewed: known(true),
    cityKeepsFourStoryLimit: known(false),
    cityKeepsPublicDisarm: known(false),
    tia1436Adopted: known(false),
    oshaWorkplace: known(true),
    federalHealthCare: known(false),
  },
};
export const officeDoor: Opening = newOpening('o', '101');

/** The most ordinary door there is: a hollow metal leaf with a bored lock to one office, a reader outside. */
const facts: FactValues = {
  doorType: 'single',
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  latch: 'bored',
  leafWidthIn: 36,
  leafHeightIn: 84,
  leafThicknessIn: 1.75,
  swingsWithEgress: false,
  hinges: 'butt',
  visionPanel: 'none',
  strikePrep: 'ansi478',
  frameGrouted: false,
  leafRaceway: false,
  fireRatingMin: 0,
  wallRatingMin: 0,
  wallKind: 'none',
  fireLabel: 'none',
  closing: 'selfClosing',
  holdOpen: 'none',
  roomUse: 'office',
  occupantLoad: 2,
  egressRole: 'exitAccess',
  exitDirection: 'towardSecure',
  exitSign: false,
  exterior: false,
  mainDoor: false,
  publicEntrance: false,
  panicPresent: false,
  lockFunction: 'storeroom',
  securityNeed: 'low',
  traffic: 'light',
  appearance: 'standard',
  operator: 'none',
  workStatus: 'existing',
  othersLeaveThroughRoom: false,
  suiteDoor: 'none',
  egressHardwareHeightIn: 40,
  handing: 'LH',
  frameConduit: false,
  wallConstruction: 'gypsum',
  latchPreload: false,
  latchProjectionIn: 0.5,
  existingArrangement: 'freeLever',
  supplyVolts: '24',
  distanceToSupplyFt: 80,
};
export function officeAnswers(key: FactKey): string | number | boolean | undefined {
  return facts[key];
}
