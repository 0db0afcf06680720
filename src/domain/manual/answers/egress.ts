import { type AnswersTo, plain, standard, trade } from './said.ts';

type Keys = 'egressRole' | 'exitDirection' | 'stairLockWanted' | 'stairReleasePoint' | 'roofUse';

export const egressAnswers: AnswersTo<Keys> = {
  egressRole: {
    exitAccess: standard(
      'Any door between where people are and the exit: room doors, corridor doors; the usual answer.',
    ),
    exteriorExit: standard('It leads straight outdoors, at or near the level of the ground.'),
    stairEntry: standard('From a floor into a stair with rated walls; it mostly swings into the stair.'),
    stairDischarge: standard('The door at the foot of the stair, by which people come out of it.'),
    horizontalExit: standard('Through a rated wall into another part of the building, on the same level.'),
    elevatorLobby: standard(
      'Between the space in front of the elevators and a tenant’s rooms on the same floor.',
    ),
    crossCorridor: trade(
      'Mostly a pair that stands open all day and divides a corridor when there is smoke.',
    ),
    roofDoor: trade('It leads onto a roof; what the roof is used for is asked separately.'),
    dischargeGate: standard('In a fence between an exit of the building and the street.'),
    egressCourt: standard('Of a yard through which people come from an exit to the street.'),
    exteriorSpace: standard('Outdoors, with no other way off: people come back in to leave.'),
    convenience: trade('The plan does not count it, yet nothing tells people that it is not an exit.'),
    vehicleDoor: trade('Vehicles pass here; people leave by a door beside it or elsewhere.'),
    noOccupiedSpace: trade('A shaft, a chase or a cabinet too small to enter.'),
    sealedOff: trade('It cannot be opened from inside, and nothing about it looks like an exit.'),
  },
  exitDirection: {
    towardSecure: trade('The usual case: people leave past the reader, and no one exits the other way.'),
    both: trade('People exit through it from either side, as in a corridor between two stairs.'),
  },
  stairLockWanted: {
    none: plain,
    stairSide: trade('A person in the stair cannot re-enter the floor; the floor side stays free.'),
    floorSide: trade(
      'A person on the floor cannot enter the stair; that is the exit, so codes prohibit it nearly everywhere.',
    ),
    both: plain,
  },
  stairReleasePoint: {
    fireCommandCenter: standard('The room from which the fire department runs operations in a high-rise.'),
    mainEntrance: standard('A switch or command just inside the main entrance, for the fire department.'),
    none: plain,
  },
  roofUse: {
    unoccupied: trade('Only people who maintain equipment or the roof go there.'),
    occupied: trade('People stay there: a terrace, a garden, a bar.'),
    egressPath: trade('People leaving one part of the building cross the roof to a stair.'),
  },
};
