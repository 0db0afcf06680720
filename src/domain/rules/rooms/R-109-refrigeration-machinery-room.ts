import { under } from '../../codes/sections.ts';
import { all, no, not, is, yes } from '../../logic/condition.ts';
import { panicTriggers } from '../../logic/derived.ts';
import { onEach } from '../onEach.ts';
import { anyLockWithoutBar, latchNeedsBar } from '../panic/panicCases.ts';
import { cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const room = {
  roomUse: 'refrigerationMachinery',
  roomAreaFt2: 1001,
  doorType: 'single',
  latch: 'mortise',
  panicPresent: false,
  swingsWithEgress: false,
} as const;
const largeRoom = panicTriggers.refrigerationMachinery;
const latching = all(largeRoom, yes('isSwinging'), not(is('latch', 'pushPull')));

export const R109 = defineRule({
  id: 'R-109',
  title: 'Large refrigeration machinery room',
  family: 'rooms',
  book: 'ibc',
  cites: [under('panicHardware'), under('refrigerationRooms')],
  confidence: 'read',
  note: 'Read in a city’s text; the area of 1,000 ft² was read second-hand.',
  why: 'Leaking refrigerant takes a person’s breath and sight, so the door must yield to a push.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(latching, no('hasExitDevice')),
      items: ['panicHardware'],
      says: 'A refrigeration machinery room of {roomAreaFt2} needs panic hardware on every swinging door that latches.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: latching,
      of: anyLockWithoutBar,
      says: 'No latch or lock but panic hardware may hold this door, and no push bar works this one.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(latching, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'This machinery room needs a push bar on its door, and there is none; a lever latch is not enough.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(largeRoom, yes('isSwinging'), no('swingsWithEgress')),
      says: 'The door must swing out of the machinery room.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: largeRoom,
      says: 'A machinery room over 1,000 ft² needs two ways out; look for the second door.',
    },
  ],
  cases: cases(
    ['1,001 ft²', room, 'yes', { clause: 'a', does: ['panicHardware'] }],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'a' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'a' }],
    ['push and pull only', { ...room, latch: 'pushPull' }, 'no', { clause: 'a' }],
    ['sliding door', { ...room, doorType: 'slidingManual' }, 'no', { clause: 'a' }],
    ['area not known', without(room, 'roomAreaFt2'), 'unknown', { clause: 'a' }],
    ['bar already there', { ...room, panicPresent: true }, 'no', { clause: 'a' }],
    ['bar or not: not known', without(room, 'panicPresent'), 'unknown', { clause: 'a' }],
    ['rated door', { ...room, fireRatingMin: 90 }, 'yes', { clause: 'a' }],
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
      'push and pull only',
      { ...room, latch: 'pushPull' },
      'no',
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
      'push and pull only',
      { ...room, latch: 'pushPull' },
      'no',
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
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'c' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'c' }],
    ['sliding door', { ...room, doorType: 'slidingManual' }, 'no', { clause: 'c' }],
    ['swing not known', without(room, 'swingsWithEgress'), 'unknown', { clause: 'c' }],
    ['1,001 ft²', room, 'yes', { clause: 'd', does: 'caution' }],
    ['1,000 ft²', { ...room, roomAreaFt2: 1000 }, 'no', { clause: 'd' }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'd' }],
    ['area not known', without(room, 'roomAreaFt2'), 'unknown', { clause: 'd' }],
  ),
});
