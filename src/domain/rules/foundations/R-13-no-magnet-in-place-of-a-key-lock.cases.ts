import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const asked = { egressRole: 'exteriorExit', wishAfterHoursMagnet: true } as const;

export const R13Cases = cases(
  ...onEach(
    [
      'magnet/safe/alarmOnly',
      'shearMagnet/safe/none',
      'magnet/safe/buttonOnly',
      'boltMotor/safe/credentialOut',
      'magnet/safe/controlled',
    ],
    'armed after hours',
    asked,
    'yes',
    { clause: 'a', does: 'prohibit' },
  ),
  [
    'not asked for',
    { ...asked, wishAfterHoursMagnet: false },
    'no',
    { clause: 'a', on: 'magnet/safe/alarmOnly' },
  ],
  ['wish not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'a', on: 'magnet/safe/alarmOnly' }],
  [
    'cabinet',
    { ...asked, egressRole: 'noOccupiedSpace' },
    'no',
    { clause: 'a', on: 'magnet/safe/alarmOnly' },
  ],
  ...onEach(
    [
      'magnet/safe/sensor',
      'magnet/safe/doorSwitch',
      'mortiseLock/secure/credentialOut',
      'mechanicalLock/none/keyInside',
    ],
    'full set, or no magnet',
    asked,
    'no',
    'a',
  ),
  ...onEach(
    ['magnet/safe/sensor', 'magnet/safe/doorSwitch', 'boltMotor/safe/sensor'],
    'full set',
    asked,
    'yes',
    { clause: 'b', does: 'caution' },
  ),
  [
    'not asked for',
    { ...asked, wishAfterHoursMagnet: false },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  ['wish not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['cabinet', { ...asked, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ...onEach(['magnet/safe/alarmOnly', 'mortiseLock/secure/free'], 'not meant', asked, 'no', 'b'),
);
