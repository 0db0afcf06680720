import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T46Cases = cases(
  ...onEach(
    [
      'strikeMortise/secure/free',
      'strikeCylindrical/secure/free',
      'strikeRim/secure/free',
      'magnet/safe/sensor',
      'shearMagnet/safe/sensor',
      'delayedMagnet/safe/delayed',
      'cylindricalLock/secure/free',
      'batteryLock/asIs/free',
    ],
    'bored latch and deadbolt',
    { latch: 'boredPlusDeadbolt' },
    'yes',
    { clause: 'a', does: 'modify locksmith' },
  ),
  ['bored latch alone', { latch: 'bored' }, 'no', { clause: 'a', on: 'strikeCylindrical/secure/free' }],
  ['latch not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeCylindrical/secure/free' }],
  [
    'a mortise lock takes the place of both',
    { latch: 'boredPlusDeadbolt' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ...onEach(
    ['strikeMortise/secure/free', 'strikeRim/safe/free'],
    'push/pull leaf',
    { latch: 'pushPull' },
    'yes',
    'b',
  ),
  [
    'roller latch',
    { latch: 'roller' },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/free', does: 'prohibit' },
  ],
  ['mortise latch', { latch: 'mortise' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ['not surveyed', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ['a magnet needs no latch', { latch: 'pushPull' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
);
