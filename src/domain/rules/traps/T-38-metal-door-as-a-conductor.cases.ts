import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T38Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'shearMagnet/safe/sensor', 'delayedMagnet/safe/delayed'],
    'steel leaf',
    { leafMaterial: 'hollowMetal' },
    'yes',
  ),
  [
    'narrow-stile leaf',
    { leafMaterial: 'aluminiumNarrow' },
    'yes',
    { on: 'magnet/safe/sensor', does: 'caution' },
  ],
  ['medium-stile leaf', { leafMaterial: 'aluminiumMedium' }, 'yes', { on: 'magnet/safe/sensor' }],
  ['wide-stile leaf', { leafMaterial: 'aluminiumWide' }, 'yes', { on: 'magnet/safe/sensor' }],
  ['wood leaf', { leafMaterial: 'woodSolidCore' }, 'no', { on: 'magnet/safe/sensor' }],
  ['leaf not surveyed', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ['a strike has no bond sensor', { leafMaterial: 'hollowMetal' }, 'no', { on: 'strikeMortise/secure/free' }],
);
