import { cases } from '../rule.ts';

export const B26Cases = cases(
  [
    'gate in a door frame',
    { doorType: 'gateSwing', frameMaterial: 'hollowMetal' },
    'yes',
    { does: 'warn doorType' },
  ],
  ['gate in a door frame', { doorType: 'gateSwing', frameMaterial: 'wood' }, 'yes'],
  ['gate in a door frame', { doorType: 'gateSwing', frameMaterial: 'aluminium' }, 'yes'],
  ['gate in a door frame', { doorType: 'gateSlide', frameMaterial: 'hollowMetal' }, 'yes'],
  ['gate in a door frame', { doorType: 'gateSlide', frameMaterial: 'wood' }, 'yes'],
  ['gate in a door frame', { doorType: 'gateSlide', frameMaterial: 'aluminium' }, 'yes'],
  ['gate on posts', { doorType: 'gateSwing', frameMaterial: 'posts' }, 'no'],
  ['door', { doorType: 'single', frameMaterial: 'hollowMetal' }, 'no'],
  ['frame not known', { doorType: 'gateSwing' }, 'unknown'],
);
