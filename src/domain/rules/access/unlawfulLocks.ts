import { all, any, atMost, ibc, is, nfpa101, no, not, over, yes } from '../../logic/condition.ts';
import { panicSpaces } from '../../logic/derived.ts';
import { exteriorSpaceKeyLock, placeOfDetention, privateBalconyLock } from '../foundations/keyLocks.ts';

const egress = yes('isEgress');
const nfpaAlone = all(nfpa101(), not(ibc()));
const care = all(
  is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2'),
  is('clinicalNeed', 'containment', 'securityThreat'),
);
/** People kept in lawfully, by the law or for their care. */
const held = any(placeOfDetention, care);
const mainDoorKeyLock = all(
  yes('mainDoor'),
  any(
    is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'),
    all(
      yes('groupA'),
      any(
        atMost('occupantLoad', 'keyLockAssemblyLoadIbc'),
        all(yes('placeOfWorship'), not(nfpaAlone)),
        all(nfpaAlone, atMost('occupantLoad', 'keyLockAssemblyLoadNfpa')),
      ),
    ),
  ),
);
const unitEntrance = all(
  is('roomUse', 'dwellingEntrance'),
  is('occupancyGroup', 'R-1', 'R-2', 'R-3'),
  any(
    all(ibc({ to: 2021 }), atMost('unitOccupantLoad', 'unitBoltLoadIbc')),
    all(ibc({ from: 2024, readTo: 2024 }), yes('unitSingleExit')),
    nfpaAlone,
  ),
);
const nfpaClassroom = all(
  nfpa101({ from: 2021, readTo: 2024 }),
  not(ibc()),
  is('roomUse', 'classroom'),
  is('workStatus', 'existing'),
  no('hasExitDevice'),
);
const lobbySet = all(is('egressRole', 'elevatorLobby'), any(ibc({ from: 2024, readTo: 2024 }), nfpaAlone));
/** What may be found on the door, one condition each, with the exceptions of the rule that forbids it. */
export const doubleCylinder = all(
  egress,
  is('existingArrangement', 'doubleCylinder'),
  not(held),
  not(mainDoorKeyLock),
  not(exteriorSpaceKeyLock),
  not(privateBalconyLock),
);
export const twoMotions = all(
  egress,
  is('existingArrangement', 'deadboltPlusLatch'),
  not(unitEntrance),
  not(is('roomUse', 'dwellingBedroom')),
  not(nfpaClassroom),
  not(placeOfDetention),
);
export const chained = all(egress, is('existingArrangement', 'padlock'), not(placeOfDetention));
/** A night latch or chain that a hand undoes is accepted at units; what takes a key or a tool is not. */
export const slideBolted = all(
  egress,
  is('existingArrangement', 'slideBolt'),
  not(unitEntrance),
  not(is('roomUse', 'dwellingBedroom')),
  not(placeOfDetention),
);
export const barricade = all(egress, is('existingArrangement', 'barricade'));
export const buttonOnly = all(egress, is('existingArrangement', 'magnetNoSensor'), not(held));
export const alarmOnly = all(egress, is('existingArrangement', 'magnetAlarmOnly'), not(held), not(lobbySet));
export const failSafeStrike = all(yes('fireRated'), is('existingArrangement', 'failSafeStrike'));
export const cardToExit = all(egress, is('existingArrangement', 'cardToExit'), not(held), not(lobbySet));
export const buttonBeforeBar = all(egress, is('existingArrangement', 'buttonBeforeBar'));
export const electricBolt = all(egress, is('existingArrangement', 'electricBolt'), not(held));
const magnetFound = is('existingArrangement', 'magnetNoSensor', 'magnetAlarmOnly', 'magnetFullSet');
/** Every held lock a code knows is closed to high hazard. */
export const heldInHighHazard = all(
  egress,
  yes('groupH'),
  is('existingArrangement', 'magnetNoSensor', 'magnetAlarmOnly', 'magnetFullSet', 'electricBolt'),
);
const crowdDoor = any(panicSpaces.ibcAssemblyOrEducation, panicSpaces.nfpaLoads);
/** A magnet is a lock, so the leaf it holds needs the bar that its space asks for. */
export const magnetWithoutBar = all(crowdDoor, magnetFound, no('hasExitDevice'));
/** A sensor beside required panic hardware is not among the cases of the code. */
export const sensorBesideBar = all(
  crowdDoor,
  is('existingArrangement', 'magnetFullSet'),
  yes('hasExitDevice'),
);
export const stairSide = all(
  is('existingArrangement', 'stairSideLocked'),
  any(
    is('egressRole', 'stairDischarge'),
    all(
      is('egressRole', 'stairEntry'),
      any(all(ibc(), no('singleExitStair')), all(nfpa101(), over('stairStories', 'stairLockStoriesNfpa'))),
    ),
  ),
);
