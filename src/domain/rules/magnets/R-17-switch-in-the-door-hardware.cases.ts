import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

export const R17Cases = cases(
  ...onEach(
    ['magnet/safe/doorSwitch', 'shearMagnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch'],
    'room door',
    { egressRole: 'exitAccess' },
    'yes',
    { clause: 'a', does: ['doorSwitchHardware', 'powerLossRelease', 'listedLock'] },
  ),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
  ...onEach(
    ['magnet/safe/sensor', 'mortiseLock/secure/free'],
    'another release',
    { egressRole: 'exitAccess' },
    'no',
    'a',
  ),
  ...(
    [
      'slidingAutomatic',
      'folding',
      'revolving',
      'overhead',
      'grille',
      'gateSlide',
      'turnstile',
      'turnstileFull',
      'turnstileSecurity',
    ] as const
  ).map(
    (doorType): CaseRow => [
      `no leaf for a bar: ${doorType}`,
      { egressRole: 'exteriorExit', doorType },
      'yes',
      { clause: 'b', on: 'magnet/safe/doorSwitch', does: 'prohibit' },
    ],
  ),
  [
    'swinging leaf',
    { egressRole: 'exteriorExit', doorType: 'single' },
    'no',
    { clause: 'b', on: 'magnet/safe/doorSwitch' },
  ],
  [
    'sliding door, released by a sensor',
    { egressRole: 'exteriorExit', doorType: 'slidingAutomatic' },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'gate that nobody leaves by',
    { egressRole: 'noOccupiedSpace', doorType: 'gateSlide' },
    'yes',
    { clause: 'b', on: 'magnet/safe/doorSwitch', does: 'prohibit' },
  ],
  [
    'door type not known',
    { egressRole: 'exteriorExit' },
    'unknown',
    { clause: 'b', on: 'magnet/safe/doorSwitch' },
  ],
);
