import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const F02Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeCylindrical/safe/free'],
    'aluminum frame',
    { frameMaterial: 'aluminium' },
    'yes',
  ),
  ['a rim strike sits on the face', { frameMaterial: 'aluminium' }, 'no', { on: 'strikeRim/secure/free' }],
  ['steel frame', { frameMaterial: 'hollowMetal' }, 'no', { on: 'strikeMortise/secure/free' }],
  [
    'beside sidelite glass',
    { frameMaterial: 'aluminium', wallConstruction: 'glass' },
    'yes',
    { on: 'strikeCylindrical/secure/free', does: 'caution' },
  ],
  ['frame not surveyed', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
);
