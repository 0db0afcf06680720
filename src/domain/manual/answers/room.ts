import { type AnswersTo, plain, standard, trade } from './said.ts';

export const roomAnswers: AnswersTo<'roomUse'> = {
  roomUse: {
    office: plain,
    suiteEntrance: trade('The front door of one tenant inside a building of several.'),
    conference: trade('A room where people gather; from 50 people on codes treat it as assembly.'),
    classroom: trade('Any room of a school in which pupils are taught, and the offices beside.'),
    dayCare: trade('A room where small children, or adults who need care, spend the day.'),
    serverRoom: trade('Computers and network equipment that few people may touch.'),
    modularDataCenter: trade(
      'A factory-made box with computers and their cooling that a person can walk into.',
    ),
    cashRoom: plain,
    pharmacy: plain,
    laboratory: plain,
    storage: plain,
    equipment: trade('Fans, pumps, tanks or other building plant; not the electrical room.'),
    electricalRoom: trade(
      'Switchboards, panels or transformers; the size of the equipment is asked separately.',
    ),
    transformerVault: standard(
      'A fire-resistant room that the electrical code asks for round certain transformers (NEC 450).',
    ),
    batteryRoom: trade('Racks of batteries that back up power, or store energy.'),
    refrigerationMachinery: standard(
      'Large chillers, in a room that must be a machinery room because of their refrigerant.',
    ),
    elevatorMachineRoom: standard('Motors and controls of an elevator (ASME A17.1).'),
    hazardousRoom: trade(
      'Something in it burns, fumes or explodes more readily than elsewhere in the building.',
    ),
    multiToilet: plain,
    singleToilet: plain,
    closet: trade('Large enough that somebody, or a child, can be shut in.'),
    dwellingEntrance: trade('Front door of an apartment, a hotel room or a dormitory room.'),
    dwellingBedroom: plain,
    unitBalcony: trade('An outside place that only one apartment or hotel room opens onto.'),
    officeTerrace: standard('An outside place that only one private office opens onto.'),
    patientRoom: trade('A room with patient beds whose door stands on the corridor.'),
    patientUnit: trade('The door by which people leave a ward or care unit.'),
    memoryCare: trade('The door of a unit for people who lose their way, as with dementia.'),
    detention: trade('Cells and the rooms round them; always goes to a reviewer.'),
    courtroom: plain,
    stormShelter: standard('A room built and tested to protect people from tornado or hurricane (ICC 500).'),
    safeRoom: trade(
      'A vault or refuge in which people may be locked in on purpose; always goes to a reviewer.',
    ),
    areaOfRefuge: standard('A marked place beside stair or elevator where somebody waits for help to leave.'),
    rescueElevatorLobby: standard(
      'The protected space in front of an elevator that fire service or people use in a fire.',
    ),
    corridor: plain,
    lobby: plain,
    kitchen: plain,
    parking: plain,
    site: trade('Outdoors: a yard, a path or a fenced ground.'),
    other: plain,
  },
};
