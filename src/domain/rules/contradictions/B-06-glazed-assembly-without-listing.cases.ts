import { cases } from '../rule.ts';

export const B06Cases = cases(
  [
    'label not seen',
    { leafMaterial: 'glazedFireAssembly', fireLabel: 'none' },
    'yes',
    { does: 'refuse fireLabel' },
  ],
  ['label not asked', { leafMaterial: 'glazedFireAssembly' }, 'yes'],
  ['label seen', { leafMaterial: 'glazedFireAssembly', fireLabel: 'seen' }, 'no'],
  ['hollow metal', { leafMaterial: 'hollowMetal', fireLabel: 'none' }, 'no'],
  ['leaf not known', { fireLabel: 'none' }, 'unknown'],
);
