import { under } from '../../codes/sections.ts';
import { all, is, no, over, yes } from '../../logic/condition.ts';
import { panicTriggers } from '../../logic/derived.ts';
import { anyLock, anyLockWithoutBar, latchNeedsBar } from '../panic/panicCases.ts';
import { defineRule } from '../rule.ts';

const machineryRoom = is('roomUse', 'refrigerationMachinery');
const largeRoom = all(machineryRoom, over('roomAreaFt2', 'refrigerationRoomAreaIbc'));
const withLock = all(panicTriggers.refrigerationMachinery, yes('isSwinging'));

export const R109 = defineRule({
  id: 'R-109',
  title: 'Refrigeration machinery room',
  family: 'rooms',
  book: 'ibc',
  cites: [under('panicHardware'), under('refrigerationRooms')],
  confidence: 'read',
  note: 'Panic hardware: from the 2021 edition on; the lists of 2018 were read and do not name this room. Swing, closing and tightness were read in the section on large rooms; that every machinery room is built so is asked by ASHRAE 15, from general knowledge.',
  why: 'Leaking refrigerant takes away breath and sight, so the door must open with a push.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(withLock, no('hasExitDevice')),
      of: anyLock,
      items: ['panicHardware'],
      says: 'A refrigeration machinery room of {roomAreaFt2} needs panic hardware on every swinging door that latches.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: withLock,
      of: anyLockWithoutBar,
      says: 'No latch or lock but panic hardware may hold this door, and no push bar operates this device.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(withLock, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'This machinery room needs a push bar on its door, and there is none; a lever latch is not enough.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(machineryRoom, yes('isSwinging'), no('swingsWithEgress')),
      says: 'The door must swing out of the machinery room.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: largeRoom,
      says: 'A machinery room over 1,000 ft² needs two exits; look for the second door.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(machineryRoom, yes('isSwinging')),
      items: ['closer', 'gasketing'],
      says: 'A machinery room door is self-closing and tight-fitting, so that refrigerant stays in the room.',
    },
  ],
});
