import { cases } from '../rule.ts';

export const B30Cases = cases(
  [
    'stories not counted',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'yes',
    { does: 'warn stairStories' },
  ],
  ['counted', { egressRole: 'stairEntry', stairLockWanted: 'stairSide', stairStories: 5 }, 'no'],
  ['nothing to lock', { egressRole: 'stairEntry', stairLockWanted: 'none' }, 'no'],
  ['wish not known', { egressRole: 'stairEntry' }, 'unknown'],
);
