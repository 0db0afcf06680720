import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T20Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'delayedMagnet/safe/delayed'],
    'left, swings in',
    { doorType: 'single', handing: 'LH' },
    'yes',
  ),
  [
    'right, swings in',
    { doorType: 'pair', handing: 'RH' },
    'yes',
    { on: 'magnet/safe/sensor', does: ['magnetBracket'] },
  ],
  ['left, swings out', { doorType: 'single', handing: 'LHR' }, 'no', { on: 'magnet/safe/sensor' }],
  ['right, swings out', { doorType: 'single', handing: 'RHR' }, 'no', { on: 'magnet/safe/sensor' }],
  ['hand not surveyed', { doorType: 'single' }, 'unknown', { on: 'magnet/safe/sensor' }],
  ['a sliding leaf has no hand', { doorType: 'slidingAutomatic' }, 'no', { on: 'magnet/safe/sensor' }],
  ['a shear magnet lies in the header', { handing: 'LH' }, 'no', { on: 'shearMagnet/safe/sensor' }],
);
