import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const gate = { egressRole: 'dischargeGate' } as const;

const shut = [
  'boltMotor/secure/none',
  'magnet/safe/alarmOnly',
  'magnet/safe/buttonOnly',
  'magnet/safe/credentialOut',
  'gateLock/secure/keyInside',
];

export const R66Cases = cases(
  ['gate in the fence', gate, 'yes', { clause: 'a', does: 'signOff must' }],
  ['office door', { egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
  ['role not known', {}, 'unknown', { clause: 'a' }],
  ...onEach(shut, 'gate in the fence', gate, 'yes', 'b'),
  ['free lever on the gate', gate, 'no', { clause: 'b', on: 'gateLock/secure/free' }],
  [
    'no safe area',
    { ...gate, safeDispersalArea: false },
    'yes',
    { clause: 'b', on: 'gateLock/secure/keyInside', does: 'prohibit' },
  ],
  [
    'safe area accepted',
    { ...gate, safeDispersalArea: true },
    'no',
    { clause: 'b', on: 'gateLock/secure/keyInside' },
  ],
  ['office door', { egressRole: 'exitAccess' }, 'no', { clause: 'b', on: 'gateLock/secure/keyInside' }],
  ['role not known', {}, 'unknown', { clause: 'b', on: 'gateLock/secure/keyInside' }],
  ['safe area accepted', { ...gate, safeDispersalArea: true }, 'yes', { clause: 'c', does: ['ahjApproval'] }],
  ['no safe area', { ...gate, safeDispersalArea: false }, 'no', { clause: 'c' }],
  ['office door', { egressRole: 'exitAccess', safeDispersalArea: true }, 'no', { clause: 'c' }],
  ['safe area not asked', gate, 'unknown', { clause: 'c' }],
);
