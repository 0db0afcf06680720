import type { BuildingRows } from './kit.ts';
import { clinicDoors } from './clinic.ts';
import { groundDoors } from './ground.ts';
import { labDoors } from './lab.ts';
import { officeDoors } from './offices.ts';
import { parkingDoors } from './parking.ts';
import { roofDoors } from './roof.ts';
import { schoolDoors } from './school.ts';
import { demoFloors, demoSpaces } from './spaces.ts';

/** An invented building with one of everything, so that every screen has something to show. */
export const demoBuilding: BuildingRows = {
  id: 'demo-building',
  name: 'Demo building',
  notes: 'Invented. Some openings are wrong on purpose; their notes or space names say so.',
  building: {
    occupancyGroup: 'B',
    powerAtDoor: true,
    cablePath: true,
    standbyHours: 4,
    readerSides: 'secure',
    sprinklered: true,
    sprinklerKind: 'nfpa13',
    buildingOccupantLoad: 1450,
    detectionThroughout: true,
    fireAlarm: true,
    voiceAlarm: false,
    highRise: false,
    storiesAboveGrade: 5,
    fireCommandCenter: false,
    attendedStation: true,
    basisConfirmed: true,
    amendmentsReviewed: true,
    cityKeepsFourStoryLimit: false,
    cityKeepsPublicDisarm: false,
    oshaWorkplace: true,
    federalHealthCare: false,
  },
  floors: demoFloors,
  spaces: demoSpaces,
  doors: [
    ...parkingDoors,
    ...groundDoors,
    ...officeDoors,
    ...clinicDoors,
    ...schoolDoors,
    ...labDoors,
    ...roofDoors,
  ],
};
