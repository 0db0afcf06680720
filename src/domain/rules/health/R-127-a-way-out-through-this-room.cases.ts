import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';

const path = { egressRole: 'exitAccess', othersLeaveThroughRoom: true, roomUse: 'office' } as const;

const cabinet = { ...path, egressRole: 'noOccupiedSpace' } as const;

const notPath = { ...path, othersLeaveThroughRoom: false } as const;

const on = 'magnet/safe/controlled';

export const R127Cases = cases(
  ...onEach(
    [
      on,
      'mortiseLock/secure/clinical',
      'mechanicalLock/none/keyInside',
      'mortiseLock/secure/credentialOut',
      'magnet/safe/buttonOnly',
      'magnet/safe/alarmOnly',
      'detentionLock/none/attended',
      'strikeMortise/secure/none',
    ],
    'others leave through the office',
    path,
    'yes',
    { clause: 'a', does: 'prohibit' },
  ),
  ...onEach(
    ['mortiseLock/secure/free', 'magnet/safe/sensor', 'delayedMagnet/safe/delayed'],
    'others leave through the office',
    path,
    'no',
    'a',
  ),
  ['nobody else leaves through it', notPath, 'no', { clause: 'a', on }],
  ['cabinet', cabinet, 'no', { clause: 'a', on }],
  ['not asked', { egressRole: 'exitAccess' }, 'unknown', { clause: 'a', on }],
  ...onEach(
    ['magnet/safe/sensor', 'magnet/safe/doorSwitch', 'delayedMagnet/safe/delayed', 'magnet/safe/lobby'],
    'others leave through the office',
    path,
    'yes',
    { clause: 'b', does: 'signOff must' },
  ),
  ['a free lever', path, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['nobody else leaves through it', notPath, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['cabinet', cabinet, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['not asked', { egressRole: 'exitAccess' }, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  ...onEach(['mortiseLock/secure/free', 'mechanicalLock/none/free'], 'direction not surveyed', path, 'yes', {
    clause: 'd',
    does: 'caution',
  }),
  ...onEach(['noLock/none/free', 'magnet/safe/sensor'], 'nothing that locks freely', path, 'no', 'd'),
  ...(['towardSecure', 'both'] as const).map(
    (exitDirection): CaseRow => [
      `direction surveyed, ${exitDirection}`,
      { ...path, exitDirection },
      'no',
      { clause: 'd', on: 'mortiseLock/secure/free' },
    ],
  ),
  ['nobody else leaves through it', notPath, 'no', { clause: 'd', on: 'mortiseLock/secure/free' }],
  ['cabinet', cabinet, 'no', { clause: 'd', on: 'mortiseLock/secure/free' }],
  ['not asked', { egressRole: 'exitAccess' }, 'unknown', { clause: 'd', on: 'mortiseLock/secure/free' }],
  [
    'through a toilet room',
    { ...path, roomUse: 'multiToilet' },
    'yes',
    { clause: 'c', does: 'warn othersLeaveThroughRoom' },
  ],
  ['through a single toilet', { ...path, roomUse: 'singleToilet' }, 'yes', { clause: 'c' }],
  ['through a storage room', { ...path, roomUse: 'storage' }, 'yes', { clause: 'c' }],
  ['through a closet', { ...path, roomUse: 'closet' }, 'yes', { clause: 'c' }],
  ['through a kitchen', { ...path, roomUse: 'kitchen' }, 'yes', { clause: 'c' }],
  ['through an office', path, 'no', { clause: 'c' }],
  ['storage room nobody passes', { ...notPath, roomUse: 'storage' }, 'no', { clause: 'c' }],
  ['not asked', { roomUse: 'storage' }, 'unknown', { clause: 'c' }],
);
