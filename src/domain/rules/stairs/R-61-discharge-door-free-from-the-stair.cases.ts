import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const out = { egressRole: 'stairDischarge' } as const;

const unlawful = [
  'magnet/safe/none',
  'magnet/safe/alarmOnly',
  'magnet/safe/buttonOnly',
  'magnet/safe/credentialOut',
  'magnet/safe/lobby',
  'mechanicalLock/none/keyInside',
];

const whole = [
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'delayedExitDevice/safe/delayed',
  'magnet/safe/controlled',
  'batteryLock/asIs/clinical',
  'detentionLock/none/attended',
];

export const R61Cases = cases(
  ...onEach(
    whole.filter((id) => !id.endsWith('attended')),
    'way out of the stair',
    out,
    'yes',
    { clause: 'd', does: 'prohibit' },
  ),
  [
    'no code chosen',
    out,
    'yes',
    { clause: 'd', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: null } },
  ],
  [
    'NFPA 101 alone',
    out,
    'no',
    { clause: 'd', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['detention goes to its own rules', out, 'no', { clause: 'd', on: 'detentionLock/none/attended' }],
  ['free bar', out, 'no', { clause: 'd', on: 'exitTrim/secure/free' }],
  ['door into the stair', { egressRole: 'stairEntry' }, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { clause: 'd', on: 'magnet/safe/sensor' }],
  ['way out of the stair', out, 'yes', { clause: 'a', on: 'exitTrim/secure/free', does: 'permit' }],
  ['the same with a mechanical lock', out, 'yes', { clause: 'a', on: 'mechanicalLock/none/free' }],
  ['door into the stair', { egressRole: 'stairEntry' }, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['magnet', out, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'exitTrim/secure/free' }],
  ...onEach(unlawful, 'way out of the stair', out, 'yes', { clause: 'b', does: 'prohibit' }),
  ...onEach(whole, 'way out of the stair', out, 'no', 'b'),
  ['free bar', out, 'no', { clause: 'b', on: 'exitTrim/secure/free' }],
  [
    'door into the stair is R-60',
    { egressRole: 'stairEntry' },
    'no',
    { clause: 'b', on: 'magnet/safe/none' },
  ],
  ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/none' }],
  ...onEach(whole, 'way out of the stair', out, 'yes', { clause: 'c', does: 'signOff must' }),
  ['free bar', out, 'no', { clause: 'c', on: 'exitTrim/secure/free' }],
  [
    'door into the stair is R-60',
    { egressRole: 'stairEntry' },
    'no',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  ['role not known', {}, 'unknown', { clause: 'c', on: 'magnet/safe/sensor' }],
);
