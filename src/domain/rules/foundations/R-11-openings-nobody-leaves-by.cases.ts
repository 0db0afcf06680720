import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const holding = [
  'magnet/safe/none',
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'magnet/safe/controlled',
  'magnet/safe/lobby',
  'magnet/safe/credentialOut',
  'magnet/safe/buttonOnly',
  'magnet/safe/alarmOnly',
  'mortiseLock/secure/clinical',
  'delayedMagnet/safe/delayed',
  'mechanicalLock/none/keyInside',
  'detentionLock/none/attended',
];

export const R11Cases = cases(
  ...onEach(holding, 'cabinet', { egressRole: 'noOccupiedSpace' }, 'yes', 'a'),
  [
    'sealed off',
    { egressRole: 'sealedOff' },
    'yes',
    { clause: 'a', on: 'magnet/safe/none', does: 'signOff must' },
  ],
  ['vehicle door', { egressRole: 'vehicleDoor' }, 'yes', { clause: 'a', on: 'boltMotor/secure/none' }],
  ['room door', { egressRole: 'exitAccess' }, 'no', { clause: 'a', on: 'magnet/safe/none' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/none' }],
  ...onEach(
    ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry'],
    'a lock that opens freely',
    { egressRole: 'noOccupiedSpace' },
    'no',
    'a',
  ),
  [
    'sealed off, exit sign over it',
    { egressRole: 'sealedOff', exitSign: true, panicPresent: false, latch: 'bored' },
    'yes',
    { clause: 'b', does: 'refuse egressRole' },
  ],
  [
    'sealed off, push bar on it',
    { egressRole: 'sealedOff', exitSign: false, panicPresent: true },
    'yes',
    { clause: 'b' },
  ],
  [
    'cage with a rim device',
    { egressRole: 'noOccupiedSpace', exitSign: false, latch: 'rimExit' },
    'yes',
    { clause: 'b' },
  ],
  [
    'sealed off, neither',
    { egressRole: 'sealedOff', exitSign: false, panicPresent: false, latch: 'bored' },
    'no',
    { clause: 'b' },
  ],
  [
    'room door with both',
    { egressRole: 'exitAccess', exitSign: true, panicPresent: true },
    'no',
    { clause: 'b' },
  ],
  ['sealed off, not looked at', { egressRole: 'sealedOff' }, 'unknown', { clause: 'b' }],
);
