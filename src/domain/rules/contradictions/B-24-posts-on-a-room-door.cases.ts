import { cases } from '../rule.ts';

export const B24Cases = cases(
  ['door on posts', { frameMaterial: 'posts', doorType: 'single' }, 'yes', { does: 'warn frameMaterial' }],
  ['door on posts', { frameMaterial: 'posts', doorType: 'pair' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'doubleEgressPair' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'doubleActing' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'balanced' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'slidingManual' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'slidingAutomatic' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'folding' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'revolving' }, 'yes'],
  ['door on posts', { frameMaterial: 'posts', doorType: 'overhead' }, 'yes'],
  ['gate on posts', { frameMaterial: 'posts', doorType: 'gateSwing' }, 'no'],
  ['door in a steel frame', { frameMaterial: 'hollowMetal', doorType: 'single' }, 'no'],
  ['door type not known', { frameMaterial: 'posts' }, 'unknown'],
);
