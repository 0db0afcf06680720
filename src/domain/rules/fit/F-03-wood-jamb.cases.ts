import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const F03Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeCylindrical/secure/free', 'strikeRim/secure/free'],
    'wood jamb',
    { frameMaterial: 'wood' },
    'yes',
    { clause: 'a', does: 'caution' },
  ),
  [
    'a magnet is not screwed to the strike jamb',
    { frameMaterial: 'wood' },
    'no',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  [
    'steel frame',
    { frameMaterial: 'hollowMetal' },
    'no',
    { clause: 'a', on: 'strikeCylindrical/secure/free' },
  ],
  ['frame not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeCylindrical/secure/free' }],
  ['high need', { frameMaterial: 'wood', securityNeed: 'high' }, 'yes', { clause: 'b', does: 'caution' }],
  ['critical need', { frameMaterial: 'wood', securityNeed: 'critical' }, 'yes', { clause: 'b' }],
  ['medium need', { frameMaterial: 'wood', securityNeed: 'medium' }, 'no', { clause: 'b' }],
  ['high need, steel frame', { frameMaterial: 'hollowMetal', securityNeed: 'high' }, 'no', { clause: 'b' }],
  ['need not stated', { frameMaterial: 'wood' }, 'unknown', { clause: 'b' }],
);
