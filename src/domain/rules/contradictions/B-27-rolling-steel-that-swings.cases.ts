import { cases } from '../rule.ts';

export const B27Cases = cases(
  ['swinging', { leafMaterial: 'rollingSteel', doorType: 'single' }, 'yes', { does: 'refuse leafMaterial' }],
  ['swinging', { leafMaterial: 'rollingSteel', doorType: 'pair' }, 'yes'],
  ['coiling door', { leafMaterial: 'rollingSteel', doorType: 'overhead' }, 'no'],
  ['hollow metal', { leafMaterial: 'hollowMetal', doorType: 'single' }, 'no'],
  ['door type not known', { leafMaterial: 'rollingSteel' }, 'unknown'],
);
