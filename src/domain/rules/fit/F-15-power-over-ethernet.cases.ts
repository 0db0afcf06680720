import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const F15Cases = cases(
  [
    'network port',
    { lockPowerSource: 'poe' },
    'yes',
    { clause: 'a', on: 'latchRetractionSolenoid/secure/free', does: 'prohibit' },
  ],
  [
    'own supply',
    { lockPowerSource: 'dedicated' },
    'no',
    { clause: 'a', on: 'latchRetractionSolenoid/secure/free' },
  ],
  ['source not known', {}, 'unknown', { clause: 'a', on: 'latchRetractionSolenoid/secure/free' }],
  [
    'motor retraction',
    { lockPowerSource: 'poe' },
    'no',
    { clause: 'a', on: 'latchRetractionMotor/secure/free' },
  ],
  ...onEach(
    ['magnet/safe/sensor', 'boltSolenoid/safe/sensor', 'delayedMagnet/safe/delayed'],
    'network port',
    { lockPowerSource: 'poe' },
    'yes',
    { clause: 'b', does: 'caution' },
  ),
  ['own supply, magnet', { lockPowerSource: 'dedicated' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['source not known, magnet', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  [
    'a strike draws little',
    { lockPowerSource: 'poe' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
);
