import { cases } from '../rule.ts';

export const B31Cases = cases(
  ['one story', { egressRole: 'stairEntry', stairStories: 1 }, 'yes', { does: 'warn stairStories' }],
  ['one story', { egressRole: 'stairDischarge', stairStories: 1 }, 'yes'],
  ['two stories', { egressRole: 'stairEntry', stairStories: 2 }, 'no'],
  ['no stair', { egressRole: 'exitAccess', stairStories: 1 }, 'no'],
  ['not counted', { egressRole: 'stairEntry' }, 'unknown'],
);
