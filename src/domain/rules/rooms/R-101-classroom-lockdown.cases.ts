import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const room = { roomUse: 'classroom', wishLockdown: true, egressRole: 'exitAccess' } as const;

const on = 'mortiseLock/secure/free';

export const R101Cases = cases(
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
  ['barricade on a cabinet', { egressRole: 'noOccupiedSpace', barricadeDevice: true }, 'no', { clause: 'b' }],
  ['not asked', room, 'unknown', { clause: 'b' }],
  [
    'barricade in a classroom',
    { ...room, barricadeDevice: true },
    'yes',
    { clause: 'c', does: 'signOff must' },
  ],
  ['no barricade', { ...room, barricadeDevice: false }, 'no', { clause: 'c' }],
  ['barricade on a cabinet', { egressRole: 'noOccupiedSpace', barricadeDevice: true }, 'no', { clause: 'c' }],
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
);
