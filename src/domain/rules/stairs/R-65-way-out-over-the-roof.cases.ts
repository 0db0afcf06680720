import { cases } from '../rule.ts';

const roof = { egressRole: 'roofDoor', roofUse: 'egressPath' } as const;

export const R65Cases = cases(
  ['way out over the roof', roof, 'yes', { clause: 'a', does: 'signOff must' }],
  ['unoccupied roof', { ...roof, roofUse: 'unoccupied' }, 'no', { clause: 'a' }],
  ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
  ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'a' }],
  ['fail secure bolt', roof, 'yes', { clause: 'b', on: 'boltMotor/secure/sensor', does: 'prohibit' }],
  ['battery lock with a code to leave', roof, 'yes', { clause: 'b', on: 'batteryLock/asIs/clinical' }],
  ['key inside', roof, 'yes', { clause: 'b', on: 'mechanicalLock/none/keyInside' }],
  ['fail-safe magnet with sensor', roof, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['fail secure lock with a free lever', roof, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  [
    'unoccupied roof',
    { ...roof, roofUse: 'unoccupied' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'office door',
    { ...roof, egressRole: 'exitAccess' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'use of the roof not known',
    { egressRole: 'roofDoor' },
    'unknown',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
);
