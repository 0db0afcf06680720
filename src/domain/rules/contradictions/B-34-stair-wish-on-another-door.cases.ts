import { cases } from '../rule.ts';

export const B34Cases = cases(
  [
    'stair lock at a room door',
    { egressRole: 'exitAccess', stairLockWanted: 'stairSide', selectedReentry: false },
    'yes',
    { does: 'warn egressRole' },
  ],
  [
    'stair lock at a room door',
    { egressRole: 'exitAccess', stairLockWanted: 'floorSide', selectedReentry: false },
    'yes',
  ],
  [
    'stair lock at a room door',
    { egressRole: 'exitAccess', stairLockWanted: 'both', selectedReentry: false },
    'yes',
  ],
  [
    're-entry at a room door',
    { egressRole: 'exitAccess', stairLockWanted: 'none', selectedReentry: true },
    'yes',
  ],
  [
    'at a stair door',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', selectedReentry: true },
    'no',
  ],
  [
    'at a stair door',
    { egressRole: 'stairDischarge', stairLockWanted: 'stairSide', selectedReentry: true },
    'no',
  ],
  ['no such wish', { egressRole: 'exitAccess', stairLockWanted: 'none', selectedReentry: false }, 'no'],
  ['wishes not known', { egressRole: 'exitAccess' }, 'unknown'],
);
