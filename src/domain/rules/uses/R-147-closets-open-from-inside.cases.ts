import { cases } from '../rule.ts';

export const R147Cases = cases(
  [
    'closet with a latch',
    { roomUse: 'closet', latch: 'bored' },
    'yes',
    { clause: 'a', does: ['insideRelease'] },
  ],
  ['closet with a catch or none', { roomUse: 'closet', latch: 'pushPull' }, 'no', { clause: 'a' }],
  ['closet with a catch or none', { roomUse: 'closet', latch: 'roller' }, 'no', { clause: 'a' }],
  ['office', { roomUse: 'office', latch: 'bored' }, 'no', { clause: 'a' }],
  ['latch not seen', { roomUse: 'closet' }, 'unknown', { clause: 'a' }],
  [
    'no way to open from inside',
    { roomUse: 'closet', latch: 'bored' },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/none', does: 'prohibit' },
  ],
  [
    'no way to open from inside',
    { roomUse: 'closet', latch: 'bored' },
    'yes',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'no way to open from inside',
    { roomUse: 'closet', latch: 'bored' },
    'yes',
    { clause: 'b', on: 'mortiseLock/secure/credentialOut' },
  ],
  [
    'no way to open from inside',
    { roomUse: 'closet', latch: 'bored' },
    'yes',
    { clause: 'b', on: 'magnet/safe/buttonOnly' },
  ],
  [
    'no way to open from inside',
    { roomUse: 'closet', latch: 'bored' },
    'yes',
    { clause: 'b', on: 'magnet/safe/alarmOnly' },
  ],
  [
    'free lever',
    { roomUse: 'closet', latch: 'bored' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/free' },
  ],
  [
    'closet with a catch or none',
    { roomUse: 'closet', latch: 'pushPull' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'closet with a catch or none',
    { roomUse: 'closet', latch: 'roller' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'office',
    { roomUse: 'office', latch: 'bored' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  ['latch not seen', { roomUse: 'closet' }, 'unknown', { clause: 'b', on: 'mechanicalLock/none/keyInside' }],
);
