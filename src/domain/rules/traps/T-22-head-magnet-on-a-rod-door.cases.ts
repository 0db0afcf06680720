import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T22Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'delayedMagnet/safe/delayed'],
    'leaf with rods',
    { latch: 'verticalRods' },
    'yes',
    { does: 'caution' },
  ),
  ['rim device', { latch: 'rimExit' }, 'no', { on: 'magnet/safe/sensor' }],
  ['latch not surveyed', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ['retraction keeps the rods', { latch: 'verticalRods' }, 'no', { on: 'latchRetractionMotor/secure/free' }],
);
