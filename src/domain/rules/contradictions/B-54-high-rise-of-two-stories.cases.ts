import { cases } from '../rule.ts';

export const B54Cases = cases(
  ['two stories', { highRise: true, storiesAboveGrade: 2 }, 'yes', { does: 'warn storiesAboveGrade' }],
  ['three stories', { highRise: true, storiesAboveGrade: 3 }, 'no'],
  ['low building', { highRise: false, storiesAboveGrade: 2 }, 'no'],
  ['stories not counted', { highRise: true }, 'unknown'],
);
