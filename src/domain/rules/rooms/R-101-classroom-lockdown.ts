import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const room = { roomUse: 'classroom', wishLockdown: true, egressRole: 'exitAccess' } as const;
const on = 'mortiseLock/secure/free';
const lockdown = all(is('roomUse', 'classroom', 'dayCare'), yes('wishLockdown'));

export const R101 = defineRule({
  id: 'R-101',
  title: 'Classroom lockdown',
  family: 'rooms',
  book: 'ibc',
  cites: [under('educationalLocking'), under('educationalLockingNfpa')],
  confidence: 'read',
  note: 'Day care is named in the fire code; whether the building code names it too was not seen.',
  why: 'A room locked against an intruder must still let children out and responders in.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: lockdown,
      items: ['outsideUnlockKey'],
      says: 'Staff and responders must be able to unlock this room from outside with a key or another approved means.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'barricadeDevice',
      severity: 'warn',
      when: all(yes('isEgress'), yes('barricadeDevice')),
      says: 'A barricade device takes more than one motion to release and keeps responders out; a lock with one motion inside does the same job.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('barricadeDevice')),
      says: 'A reviewer settles what becomes of the barricade device before this door is issued.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: lockdown,
      of: { not: { release: ['free'] } },
      says: 'This is not a plain lock with one motion inside, so a reviewer signs for its use in a lockdown.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(lockdown, any(yes('panicPresent'), yes('fireRated'))),
      says: 'Nothing may be added that voids the listing of the panic hardware, fire door hardware or closer; fire doors are altered only as NFPA 80 allows.',
    },
    {
      key: 'f',
      effect: 'permit',
      when: lockdown,
      of: { wired: true, release: ['free'] },
      says: 'Remote locking of all rooms is allowed as long as the inside lever always opens.',
    },
  ],
  cases: cases(
    ['classroom', room, 'yes', { clause: 'a', does: ['outsideUnlockKey'] }],
    ['day-care room', { ...room, roomUse: 'dayCare' }, 'yes', { clause: 'a' }],
    ['office with lockdown', { ...room, roomUse: 'office' }, 'no', { clause: 'a' }],
    ['classroom without lockdown', { ...room, wishLockdown: false }, 'no', { clause: 'a' }],
    ['wish not known', { roomUse: 'classroom' }, 'unknown', { clause: 'a' }],
    [
      'barricade in a classroom',
      { ...room, barricadeDevice: true },
      'yes',
      { clause: 'b', does: 'warn barricadeDevice' },
    ],
    ['no barricade', { ...room, barricadeDevice: false }, 'no', { clause: 'b' }],
    [
      'barricade on a cabinet',
      { egressRole: 'noOccupiedSpace', barricadeDevice: true },
      'no',
      { clause: 'b' },
    ],
    ['not asked', room, 'unknown', { clause: 'b' }],
    [
      'barricade in a classroom',
      { ...room, barricadeDevice: true },
      'yes',
      { clause: 'c', does: 'signOff must' },
    ],
    ['no barricade', { ...room, barricadeDevice: false }, 'no', { clause: 'c' }],
    [
      'barricade on a cabinet',
      { egressRole: 'noOccupiedSpace', barricadeDevice: true },
      'no',
      { clause: 'c' },
    ],
    ['not asked', room, 'unknown', { clause: 'c' }],
    ['magnet with sensor', room, 'yes', { clause: 'd', on: 'magnet/safe/sensor', does: 'signOff must' }],
    ['magnet in day care', { ...room, roomUse: 'dayCare' }, 'yes', { clause: 'd', on: 'magnet/safe/sensor' }],
    ['free lever', room, 'no', { clause: 'd', on }],
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
    ['no lockdown', { ...room, wishLockdown: false }, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
    ['wish not known', { roomUse: 'classroom' }, 'unknown', { clause: 'd', on: 'magnet/safe/sensor' }],
    [
      'panic hardware',
      { ...room, panicPresent: true, fireRatingMin: 0, wallRatingMin: 0 },
      'yes',
      { clause: 'e', does: 'caution' },
    ],
    ['fire door', { ...room, panicPresent: false, fireRatingMin: 20 }, 'yes', { clause: 'e' }],
    [
      'rated day-care door',
      { ...room, roomUse: 'dayCare', panicPresent: false, fireRatingMin: 20 },
      'yes',
      { clause: 'e' },
    ],
    ['neither', { ...room, panicPresent: false, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'e' }],
    ['rated office', { ...room, roomUse: 'office', fireRatingMin: 20 }, 'no', { clause: 'e' }],
    ['no lockdown', { ...room, wishLockdown: false, fireRatingMin: 20 }, 'no', { clause: 'e' }],
    ['rating not known', { ...room, panicPresent: false }, 'unknown', { clause: 'e' }],
    ['electric lever lock', room, 'yes', { clause: 'f', on, does: 'permit' }],
    ['electric lever lock in day care', { ...room, roomUse: 'dayCare' }, 'yes', { clause: 'f', on }],
    ...onEach(['mechanicalLock/none/free', 'magnet/safe/sensor'], 'no electric lever lock', room, 'no', 'f'),
    ['office', { ...room, roomUse: 'office' }, 'no', { clause: 'f', on }],
    ['no lockdown', { ...room, wishLockdown: false }, 'no', { clause: 'f', on }],
    ['wish not known', { roomUse: 'classroom' }, 'unknown', { clause: 'f', on }],
  ),
});
