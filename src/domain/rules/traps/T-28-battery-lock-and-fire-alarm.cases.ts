import { cases } from '../rule.ts';

export const T28Cases = cases(
  [
    'owner wants it open on alarm',
    { wishUnlockOnAlarm: true },
    'yes',
    { on: 'batteryLock/asIs/free', does: 'prohibit' },
  ],
  [
    'stair side locked',
    { wishUnlockOnAlarm: false, egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'yes',
    { on: 'batteryLock/asIs/free' },
  ],
  [
    'stair door, wish not asked',
    { wishUnlockOnAlarm: false, egressRole: 'stairEntry' },
    'yes',
    { on: 'batteryLock/asIs/free' },
  ],
  ['neither', { wishUnlockOnAlarm: false, egressRole: 'exitAccess' }, 'no', { on: 'batteryLock/asIs/free' }],
  ['not known', {}, 'unknown', { on: 'batteryLock/asIs/free' }],
  ['a wired lock can be released', { wishUnlockOnAlarm: true }, 'no', { on: 'mortiseLock/safe/free' }],
);
