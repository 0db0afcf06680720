import { under } from '../../codes/sections.ts';
import { all, is, no, over, yes } from '../../logic/condition.ts';
import { panicTriggers } from '../../logic/derived.ts';
import { onEach } from '../onEach.ts';
import { anyLock, anyLockWithoutBar, latchNeedsBar } from '../panic/panicCases.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const room = {
  roomUse: 'refrigerationMachinery',
  roomAreaFt2: 1001,
  doorType: 'single',
  latch: 'mortise',
  panicPresent: false,
  swingsWithEgress: false,
} as const;
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
  cases: cases(
    ['1,001 ft²', room, 'yes', { clause: 'a', on: 'strikeRim/secure/free', does: ['panicHardware'] }],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
    ['push and pull only', { ...room, latch: 'pushPull' }, 'no', { clause: 'a', on: 'noLock/none/free' }],
    [
      'push and pull that gets a lock',
      { ...room, latch: 'pushPull' },
      'yes',
      { clause: 'a', on: 'strikeRim/secure/free' },
    ],
    [
      'sliding door',
      { ...room, doorType: 'slidingManual' },
      'no',
      { clause: 'a', on: 'strikeRim/secure/free' },
    ],
    ['area not known', without(room, 'roomAreaFt2'), 'unknown', { clause: 'a', on: 'strikeRim/secure/free' }],
    [
      'bar already there',
      { ...room, panicPresent: true },
      'no',
      { clause: 'a', on: 'strikeRim/secure/free' },
    ],
    [
      'bar or not: not known',
      without(room, 'panicPresent'),
      'unknown',
      { clause: 'a', on: 'strikeRim/secure/free' },
    ],
    ['rated door', { ...room, fireRatingMin: 90 }, 'yes', { clause: 'a', on: 'strikeRim/secure/free' }],
    ...onEach(
      ['mortiseLock/secure/free', 'boltMotor/safe/doorSwitch', 'magnet/safe/sensor'],
      '1,001 ft²',
      room,
      'yes',
      { clause: 'b', does: 'prohibit' },
    ),
    ...onEach(
      ['strikeRim/secure/free', 'exitTrim/secure/free', 'mechanicalLock/none/free'],
      '1,001 ft²',
      room,
      'no',
      'b',
    ),
    ...onEach(
      ['strikeMortise/secure/free', 'batteryLock/asIs/free', 'mechanicalLock/none/free'],
      '1,001 ft², lever',
      room,
      'yes',
      'e',
    ),
    ...onEach(['strikeRim/secure/free', 'exitTrim/secure/free'], '1,001 ft², lever', room, 'no', 'e'),
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'e', on: 'strikeMortise/secure/free' }],
    [
      'a delayed magnet needs the bar too',
      room,
      'yes',
      { clause: 'e', on: 'delayedMagnet/safe/delayed', does: 'prohibit' },
    ],
    ['a lock of its own is clause b', room, 'no', { clause: 'e', on: 'mortiseLock/secure/free' }],
    ['a key lock is judged elsewhere', room, 'no', { clause: 'e', on: 'mechanicalLock/none/keyInside' }],
    ['a key lock is judged elsewhere', room, 'no', { clause: 'b', on: 'gateLock/secure/keyInside' }],
    [
      'bar already there',
      { ...room, panicPresent: true },
      'no',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    [
      'bar or not: not known',
      without(room, 'panicPresent'),
      'unknown',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'e', on: 'strikeMortise/secure/free' }],
    [
      'push and pull that gets a lock',
      { ...room, latch: 'pushPull' },
      'yes',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    [
      'sliding door',
      { ...room, doorType: 'slidingManual' },
      'no',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    [
      'push and pull that gets a lock',
      { ...room, latch: 'pushPull' },
      'yes',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'sliding door',
      { ...room, doorType: 'slidingManual' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'area not known',
      without(room, 'roomAreaFt2'),
      'unknown',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    ['swings in', room, 'yes', { clause: 'c', does: 'modify doorSupplier' }],
    ['swings out', { ...room, swingsWithEgress: true }, 'no', { clause: 'c' }],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'yes', { clause: 'c' }],
    ['area not known', without(room, 'roomAreaFt2'), 'yes', { clause: 'c' }],
    ['IBC 2018', room, 'yes', { clause: 'c', basis: { ibc: 2018 } }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'c' }],
    ['sliding door', { ...room, doorType: 'slidingManual' }, 'no', { clause: 'c' }],
    ['swing not known', without(room, 'swingsWithEgress'), 'unknown', { clause: 'c' }],
    ['1,001 ft²', room, 'yes', { clause: 'd', does: 'caution' }],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'd' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'd' }],
    ['area not known', without(room, 'roomAreaFt2'), 'unknown', { clause: 'd' }],
    ...([2021, 2024] as const).flatMap((ibc): readonly CaseRow[] => [
      ['1,001 ft²', room, 'yes', { clause: 'a', on: 'strikeRim/secure/free', basis: { ibc } }],
      ['1,001 ft²', room, 'yes', { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc } }],
      ['1,001 ft²', room, 'yes', { clause: 'e', on: 'strikeMortise/secure/free', basis: { ibc } }],
    ]),
    ...([{ ibc: 2018 }, { ibc: null, nfpa101: 2021 }] as const).flatMap((basis): readonly CaseRow[] => [
      [
        'the adopted book does not name the room',
        room,
        'no',
        { clause: 'a', on: 'strikeRim/secure/free', basis },
      ],
      [
        'the adopted book does not name the room',
        room,
        'no',
        { clause: 'b', on: 'magnet/safe/sensor', basis },
      ],
      [
        'the adopted book does not name the room',
        room,
        'no',
        { clause: 'e', on: 'strikeMortise/secure/free', basis },
      ],
      ['large all the same', room, 'yes', { clause: 'd', basis }],
    ]),
    ...([2018, 2021, 2024] as const).map(
      (ibc): CaseRow => [
        'machinery room of any size',
        { ...room, roomAreaFt2: 200 },
        'yes',
        { clause: 'f', basis: { ibc }, does: ['closer', 'gasketing'] },
      ],
    ),
    ['area not known', without(room, 'roomAreaFt2'), 'yes', { clause: 'f' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'f' }],
    ['sliding door', { ...room, doorType: 'slidingManual' }, 'no', { clause: 'f' }],
    ['room not known', without(room, 'roomUse'), 'unknown', { clause: 'f' }],
  ),
});
