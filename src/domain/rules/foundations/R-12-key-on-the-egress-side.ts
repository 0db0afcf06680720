import { text, under } from '../../codes/sections.ts';
import { all, any, atMost, ibc, is, nfpa101, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import {
  exteriorSpace,
  exteriorSpaceKeyLock,
  mainDoorKeyLockIbc,
  mainDoorKeyLockNfpa,
  placeOfDetention,
  privateBalconyLock,
  unusedRoof,
  worshipMainDoor,
} from './keyLocks.ts';

export const R12 = defineRule({
  id: 'R-12',
  title: 'Keyed locking from the egress side only where the code lists it',
  family: 'foundations',
  book: 'ibc',
  cites: [
    under('locksAndLatches'),
    under('freeEgressNfpa'),
    text('nfpa101', '12.2.2.2', 'Assembly main entrance'),
  ],
  confidence: 'read',
  note: 'The NFPA 101 figure and the private balconies are from general knowledge. That the IBC lets a place of worship lock its main door at any load was read for 2018; NFPA 101 has no such case that is known here. NFPA 101 is not known to have the exterior-space case; its sign and the key at hand are from general knowledge.',
  why: 'Anyone without the key is locked in; the listed cases make sure that the door is open while people are inside.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(
        any(ibc(), not(nfpa101())),
        yes('isEgress'),
        not(any(mainDoorKeyLockIbc, exteriorSpaceKeyLock, privateBalconyLock, unusedRoof, placeOfDetention)),
      ),
      of: { release: ['keyInside'] },
      says: 'This lock needs a key to leave, and this door is not one the code allows to be key locked from the inside.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(nfpa101(), yes('isEgress'), not(any(mainDoorKeyLockNfpa, unusedRoof, placeOfDetention))),
      of: { release: ['keyInside'] },
      says: 'This lock needs a key to leave, which NFPA 101 accepts only at the main entrance of occupancies whose chapter says so.',
    },
    {
      key: 'c',
      effect: 'require',
      items: ['keyLockMainDoor', 'signKeyLock'],
      when: all(any(ibc(), not(nfpa101())), yes('isEgress'), any(mainDoorKeyLockNfpa, worshipMainDoor)),
      of: { release: ['keyInside'] },
      says: 'The lock must be readily seen as locked, and a sign in letters 1 in high says that the door stays unlocked while the space is occupied.',
    },
    {
      key: 'e',
      effect: 'require',
      items: ['keyLockMainDoor', 'signKeyLockBuilding'],
      when: all(nfpa101(), yes('isEgress'), mainDoorKeyLockNfpa),
      of: { release: ['keyInside'] },
      says: 'NFPA 101 requires that the lock be readily distinguishable as locked, its own sign in letters 1 in high, and a key immediately available to anyone inside while the door is locked.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(
        yes('isEgress'),
        any(
          mainDoorKeyLockNfpa,
          all(any(ibc(), not(nfpa101())), worshipMainDoor),
          all(exteriorSpace, atMost('occupantLoad', 'exteriorSpaceLoadIbc')),
          is('roomUse', 'unitBalcony', 'officeTerrace'),
        ),
      ),
      of: { release: ['keyInside'] },
      says: 'A keyed exit relies on someone unlocking the door every day; a reviewer, and under NFPA 101 the occupancy chapter, must accept it.',
    },
  ],
});
