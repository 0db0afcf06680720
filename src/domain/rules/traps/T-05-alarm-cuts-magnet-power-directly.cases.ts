import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T05Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'shearMagnet/safe/doorSwitch', 'delayedMagnet/safe/delayed'],
    'building with fire alarm',
    { fireAlarm: true },
    'yes',
    { does: 'caution' },
  ),
  ['no fire alarm', { fireAlarm: false }, 'no', { on: 'magnet/safe/sensor' }],
  ['not surveyed', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ['a lock lets people out by hand', { fireAlarm: true }, 'no', { on: 'mortiseLock/secure/free' }],
);
