import { cases } from '../rule.ts';

export const B55Cases = cases(
  ['twelve stories', { highRise: false, storiesAboveGrade: 12 }, 'yes', { does: 'refuse highRise' }],
  ['eleven stories', { highRise: false, storiesAboveGrade: 11 }, 'no'],
  ['high-rise', { highRise: true, storiesAboveGrade: 12 }, 'no'],
  ['stories not counted', { highRise: false }, 'unknown'],
);
