import { cases } from '../rule.ts';

export const R153Cases = cases(
  [
    'room under NFPA 101',
    { roomUse: 'classroom', wishLockdown: true },
    'yes',
    { clause: 'a', basis: { nfpa101: 2021 }, does: ['lockFromInside', 'outsideUnlockKey', 'ahjApproval'] },
  ],
  [
    'room under NFPA 101',
    { roomUse: 'dayCare', wishLockdown: true },
    'yes',
    { clause: 'a', basis: { nfpa101: 2021 } },
  ],
  ['IBC alone', { roomUse: 'classroom', wishLockdown: true }, 'no', { clause: 'a' }],
  ['office', { roomUse: 'office', wishLockdown: true }, 'no', { clause: 'a', basis: { nfpa101: 2021 } }],
  [
    'no lockdown wanted',
    { roomUse: 'classroom', wishLockdown: false },
    'no',
    { clause: 'a', basis: { nfpa101: 2021 } },
  ],
  ['wish not known', { roomUse: 'classroom' }, 'unknown', { clause: 'a', basis: { nfpa101: 2021 } }],
  [
    'magnet',
    { roomUse: 'classroom', wishLockdown: true },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 }, does: 'signOff must' },
  ],
  [
    'magnet',
    { roomUse: 'dayCare', wishLockdown: true },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
  ],
  [
    'lock with free exit',
    { roomUse: 'classroom', wishLockdown: true },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free', basis: { nfpa101: 2021 } },
  ],
  [
    'IBC alone',
    { roomUse: 'classroom', wishLockdown: true },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'office',
    { roomUse: 'office', wishLockdown: true },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
  ],
  [
    'no lockdown wanted',
    { roomUse: 'classroom', wishLockdown: false },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
  ],
  [
    'wish not known',
    { roomUse: 'classroom' },
    'unknown',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
  ],
);
