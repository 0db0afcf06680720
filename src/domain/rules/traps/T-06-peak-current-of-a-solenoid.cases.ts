import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T06Cases = cases(
  [
    'solenoid retraction',
    {},
    'yes',
    { clause: 'a', on: 'latchRetractionSolenoid/secure/free', does: 'caution' },
  ],
  ['motor retraction', {}, 'no', { clause: 'a', on: 'latchRetractionMotor/secure/free' }],
  ...onEach(
    [
      'latchRetractionMotor/secure/free',
      'latchRetractionSolenoid/secure/free',
      'delayedExitDevice/safe/delayed',
    ],
    '12 V supply',
    { supplyVolts: '12' },
    'yes',
    { clause: 'b', does: 'caution' },
  ),
  ['24 V supply', { supplyVolts: '24' }, 'no', { clause: 'b', on: 'latchRetractionMotor/secure/free' }],
  ['voltage not chosen', {}, 'unknown', { clause: 'b', on: 'latchRetractionMotor/secure/free' }],
  ['strikes come in both', { supplyVolts: '12' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ...onEach(
    ['boltSolenoid/secure/sensor', 'glassPatchLock/safe/sensor', 'gateLock/secure/free'],
    'moved by a solenoid',
    {},
    'yes',
    { clause: 'c', does: 'caution' },
  ),
  ['moved by a motor', {}, 'no', { clause: 'c', on: 'boltMotor/secure/sensor' }],
);
