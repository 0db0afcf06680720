import { cases } from '../rule.ts';

export const T18Cases = cases(
  [
    'steel frame in place, not tapped',
    { frameMaterial: 'hollowMetal', workStatus: 'existing' },
    'yes',
    { does: 'warn frameGrouted' },
  ],
  ['steel frame not yet set', { frameMaterial: 'hollowMetal', workStatus: 'new' }, 'no'],
  ['steel frame, hollow', { frameMaterial: 'hollowMetal', frameGrouted: false }, 'no'],
  ['wood frame', { frameMaterial: 'wood' }, 'no'],
  ['frame not surveyed', {}, 'unknown'],
);
