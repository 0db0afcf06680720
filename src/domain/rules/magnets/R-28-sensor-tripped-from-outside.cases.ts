import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const R28Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'boltMotor/safe/sensor'],
    'gap between glass leaves',
    { sensorTrippable: true },
    'yes',
    { does: 'caution' },
  ),
  ['tight door', { sensorTrippable: false }, 'no', { on: 'magnet/safe/sensor' }],
  ['not looked at', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ...onEach(
    ['magnet/safe/doorSwitch', 'mortiseLock/secure/free'],
    'no sensor',
    { sensorTrippable: true },
    'no',
  ),
);
