import { cases } from '../rule.ts';

export const R143Cases = cases(
  [
    'just under 48 in between',
    { doorsInSeries: true, seriesSpacingIn: 47.9375 },
    'yes',
    { clause: 'a', does: 'caution' },
  ],
  ['48 in between', { doorsInSeries: true, seriesSpacingIn: 48 }, 'no', { clause: 'a' }],
  ['no second door', { doorsInSeries: false, seriesSpacingIn: 10 }, 'no', { clause: 'a' }],
  ['not measured', { doorsInSeries: true }, 'unknown', { clause: 'a' }],
  [
    'interlock',
    { doorsInSeries: true, wishInterlock: true, readerSides: 'secure' },
    'yes',
    { clause: 'b', does: 'caution' },
  ],
  [
    'readers on both sides',
    { doorsInSeries: true, wishInterlock: false, readerSides: 'both' },
    'yes',
    { clause: 'b' },
  ],
  [
    'one reader, no interlock',
    { doorsInSeries: true, wishInterlock: false, readerSides: 'secure' },
    'no',
    { clause: 'b' },
  ],
  [
    'no second door',
    { doorsInSeries: false, wishInterlock: true, readerSides: 'both' },
    'no',
    { clause: 'b' },
  ],
  ['wishes not known', { doorsInSeries: true }, 'unknown', { clause: 'b' }],
);
