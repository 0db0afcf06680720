import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T16Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeRim/safe/free'],
    'gasketed door',
    { latchPreload: true },
    'yes',
    { clause: 'a', does: ['preloadStrike'] },
  ),
  ['closes freely', { latchPreload: false }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['not tried', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'a lever draws its latch by hand',
    { latchPreload: true },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ...onEach(
    [
      'shearMagnet/safe/sensor',
      'boltSolenoid/safe/sensor',
      'boltMotor/secure/sensor',
      'glassPatchLock/safe/sensor',
    ],
    'side load',
    { latchPreload: true },
    'yes',
    { clause: 'b', does: 'caution' },
  ),
  ['no side load', { latchPreload: false }, 'no', { clause: 'b', on: 'shearMagnet/safe/sensor' }],
  ['side load not tried', {}, 'unknown', { clause: 'b', on: 'shearMagnet/safe/sensor' }],
  [
    'a direct-hold magnet does not bind',
    { latchPreload: true },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
);
