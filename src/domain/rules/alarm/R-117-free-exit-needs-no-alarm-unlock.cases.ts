import { cases } from '../rule.ts';

const on = 'mortiseLock/secure/free';

export const R117Cases = cases(
  ['any door with a free lever', {}, 'yes', { clause: 'a', on, does: 'permit' }],
  ['a magnet holds people', {}, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['a battery lock cannot be connected', {}, 'no', { clause: 'a', on: 'batteryLock/asIs/free' }],
  ['unlock on alarm wanted', { wishUnlockOnAlarm: true }, 'yes', { clause: 'b', on, does: 'caution' }],
  ['not wanted', { wishUnlockOnAlarm: false }, 'no', { clause: 'b', on }],
  ['not asked', {}, 'unknown', { clause: 'b', on }],
  ['a magnet has to unlock', { wishUnlockOnAlarm: true }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  [
    'a battery lock cannot be connected',
    { wishUnlockOnAlarm: true },
    'no',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
);
