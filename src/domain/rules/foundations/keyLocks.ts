import { all, any, atMost, ibc, is, yes } from '../../logic/condition.ts';

/** Main door of an assembly space up to the load of the IBC, or of a place of worship at any load; here a key lock may also stand in for panic hardware. */
export const assemblyMainDoorIbc = all(
  yes('mainDoor'),
  yes('groupA'),
  any(atMost('occupantLoad', 'keyLockAssemblyLoadIbc'), yes('placeOfWorship')),
);
/** The part of it that has no load: nobody but the IBC knows it. */
export const worshipMainDoor = all(yes('mainDoor'), yes('groupA'), yes('placeOfWorship'));
/** The same under NFPA 101, whose figure is higher. */
export const assemblyMainDoorNfpa = all(
  yes('mainDoor'),
  yes('groupA'),
  atMost('occupantLoad', 'keyLockAssemblyLoadNfpa'),
);
const otherMainDoor = all(yes('mainDoor'), is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'));

/** The main door of a use that the IBC lets lock by key: small assembly, business, factory, shop, storage. */
export const mainDoorKeyLockIbc = any(assemblyMainDoorIbc, otherMainDoor);
/** The same under NFPA 101; its occupancy chapter must allow the lock. */
export const mainDoorKeyLockNfpa = any(assemblyMainDoorNfpa, otherMainDoor);

/** Court, terrace or occupied roof whose egress leads back inside. */
export const exteriorSpace = any(
  is('egressRole', 'exteriorSpace'),
  all(is('egressRole', 'roofDoor'), is('roofUse', 'occupied')),
);
/** From 2021 its doors have a case of their own. */
export const exteriorSpaceKeyLock = all(
  ibc({ from: 2021, readTo: 2024 }),
  exteriorSpace,
  atMost('occupantLoad', 'exteriorSpaceLoadIbc'),
);

/** Balcony of one unit, small terrace of a private office: cases of their own from 2021. */
export const privateBalconyLock = all(
  ibc({ from: 2021, readTo: 2024 }),
  is('roomUse', 'unitBalcony', 'officeTerrace'),
);

/** A roof that nobody uses may be locked against coming back in from it. */
export const unusedRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'unoccupied'));

/** Places where people are held; send them to a reviewer. */
export const placeOfDetention = any(is('roomUse', 'detention'), is('occupancyGroup', 'I-3'));
