import { all, any, atMost, ibc, is, yes } from '../../logic/condition.ts';

/** The main door of a use that the IBC lets lock by key: assembly up to the load, or business, factory, shop, storage. */
export const mainDoorKeyLockIbc = all(
  yes('mainDoor'),
  any(
    all(yes('groupA'), atMost('occupantLoad', 'keyLockAssemblyLoadIbc')),
    is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'),
  ),
);

/** The same under NFPA 101, whose assembly figure is higher; its occupancy chapter must allow the lock. */
export const mainDoorKeyLockNfpa = all(
  yes('mainDoor'),
  any(
    all(yes('groupA'), atMost('occupantLoad', 'keyLockAssemblyLoadNfpa')),
    is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'),
  ),
);

/** Court, terrace or balcony whose way out leads back inside: a case of its own from 2021. */
export const exteriorSpaceKeyLock = all(
  ibc({ from: 2021 }),
  is('egressRole', 'exteriorSpace'),
  atMost('occupantLoad', 'exteriorSpaceLoadIbc'),
);

/** Balcony of one unit, small terrace of a private office: cases of their own from 2021. */
export const privateBalconyLock = all(ibc({ from: 2021 }), is('roomUse', 'unitBalcony', 'officeTerrace'));

/** Places where people are held; send them to a reviewer. */
export const placeOfDetention = any(is('roomUse', 'detention'), is('occupancyGroup', 'I-3'));
