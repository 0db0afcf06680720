import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const cash = { roomUse: 'cashRoom', egressRole: 'exitAccess' } as const;

export const R99Cases = cases(
  ...onEach(
    [
      'mortiseLock/secure/credentialOut',
      'magnet/safe/buttonOnly',
      'magnet/safe/alarmOnly',
      'strikeMortise/secure/none',
    ],
    'cash room',
    cash,
    'yes',
    'a',
  ),
  [
    'pharmacy',
    { ...cash, roomUse: 'pharmacy' },
    'yes',
    { clause: 'a', on: 'magnet/safe/buttonOnly', does: 'prohibit' },
  ],
  ['office', { ...cash, roomUse: 'office' }, 'no', { clause: 'a', on: 'magnet/safe/buttonOnly' }],
  [
    'cash cabinet',
    { ...cash, egressRole: 'noOccupiedSpace' },
    'no',
    { clause: 'a', on: 'magnet/safe/buttonOnly' },
  ],
  ['role not known', { roomUse: 'cashRoom' }, 'unknown', { clause: 'a', on: 'magnet/safe/buttonOnly' }],
  ...onEach(['mortiseLock/secure/free', 'magnet/safe/sensor'], 'cash room', cash, 'no', 'a'),
  ['cash room', cash, 'yes', { clause: 'b', on: 'mortiseLock/secure/free', does: 'permit' }],
  ['pharmacy', { roomUse: 'pharmacy' }, 'yes', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['room not known', {}, 'unknown', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['card to leave', cash, 'no', { clause: 'b', on: 'mortiseLock/secure/credentialOut' }],
);
