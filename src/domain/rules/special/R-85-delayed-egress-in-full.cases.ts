import { cases } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const R85Cases = cases(
  [
    'exit door with delay',
    { egressRole: 'exteriorExit' },
    'yes',
    {
      clause: 'a',
      on,
      does: [
        'delaySounder',
        'delayOverride',
        'detectionRelease',
        'powerLossRelease',
        'emergencyLighting',
        'overrideReset',
        'listedLock',
      ],
    },
  ],
  [
    'delayed magnet',
    { egressRole: 'exteriorExit' },
    'yes',
    { clause: 'a', on: 'delayedMagnet/safe/delayed' },
  ],
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on }],
  ['role not known', {}, 'unknown', { clause: 'a', on }],
  [
    'a free bar needs none of it',
    { egressRole: 'exteriorExit' },
    'no',
    { clause: 'a', on: 'exitTrim/secure/free' },
  ],
  ['exit door with delay', { egressRole: 'exteriorExit' }, 'yes', { clause: 'b', on, does: 'signOff must' }],
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'b', on }],
  ['role not known', {}, 'unknown', { clause: 'b', on }],
  [
    'a free bar needs no signature',
    { egressRole: 'exteriorExit' },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  [
    'NFPA 101 beside IBC',
    { egressRole: 'exteriorExit' },
    'yes',
    { clause: 'c', on, basis: { nfpa101: 2018 }, does: 'caution' },
  ],
  ['IBC only', { egressRole: 'exteriorExit' }, 'no', { clause: 'c', on }],
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'c', on, basis: { nfpa101: 2018 } }],
  ['role not known', {}, 'unknown', { clause: 'c', on, basis: { nfpa101: 2018 } }],
  [
    'a free bar',
    { egressRole: 'exteriorExit' },
    'no',
    { clause: 'c', on: 'exitTrim/secure/free', basis: { nfpa101: 2018 } },
  ],
);
