import { cases } from '../rule.ts';

const on = 'batteryLock/asIs/free';
const stairDoor = { wishUnlockOnAlarm: false, egressRole: 'stairEntry' } as const;

export const T28Cases = cases(
  [
    'stair side locked',
    { ...stairDoor, stairLockWanted: 'stairSide' },
    'yes',
    { clause: 'a', on, does: 'prohibit' },
  ],
  ['stair door, wish not asked', stairDoor, 'yes', { clause: 'a', on }],
  [
    'a wish forbids nothing',
    { wishUnlockOnAlarm: true, egressRole: 'exitAccess' },
    'no',
    { clause: 'a', on },
  ],
  ['role not known', {}, 'unknown', { clause: 'a', on }],
  ['a wired lock can be released', stairDoor, 'no', { clause: 'a', on: 'mortiseLock/safe/free' }],
  ['owner wants it open on alarm', { wishUnlockOnAlarm: true }, 'yes', { clause: 'b', on, does: 'caution' }],
  ['no such wish', { wishUnlockOnAlarm: false }, 'no', { clause: 'b', on }],
  ['not asked', {}, 'unknown', { clause: 'b', on }],
  [
    'a wired lock can be released',
    { wishUnlockOnAlarm: true },
    'no',
    { clause: 'b', on: 'mortiseLock/safe/free' },
  ],
);
