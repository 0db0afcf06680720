import { cases } from '../rule.ts';
import { nfpaOnly } from './given.ts';

const roof = { egressRole: 'roofDoor', roofUse: 'unoccupied' } as const;

export const R63Cases = cases(
  ['unoccupied roof', roof, 'yes', { clause: 'a', on: 'mortiseLock/secure/free', does: 'permit' }],
  ['unoccupied roof, keyed inside', roof, 'yes', { clause: 'a', on: 'mechanicalLock/none/keyInside' }],
  ['terrace', { ...roof, roofUse: 'occupied' }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'office door',
    { ...roof, egressRole: 'exitAccess' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ['a magnet is not waved through', roof, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  [
    'use of the roof not known',
    { egressRole: 'roofDoor' },
    'unknown',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ['unoccupied roof, NFPA 101', roof, 'yes', { clause: 'b', basis: nfpaOnly, does: 'caution' }],
  ['unoccupied roof, IBC alone', roof, 'no', { clause: 'b' }],
  ['terrace, NFPA 101', { ...roof, roofUse: 'occupied' }, 'no', { clause: 'b', basis: nfpaOnly }],
  ['office door, NFPA 101', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'b', basis: nfpaOnly }],
  ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'b', basis: nfpaOnly }],
  ['unoccupied roof', roof, 'yes', { clause: 'c', does: 'caution' }],
  ['terrace', { ...roof, roofUse: 'occupied' }, 'no', { clause: 'c' }],
  ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'c' }],
  ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'c' }],
  ['unoccupied roof', roof, 'yes', { clause: 'd', on: 'mechanicalLock/none/free', does: 'caution' }],
  ['terrace', { ...roof, roofUse: 'occupied' }, 'no', { clause: 'd', on: 'mechanicalLock/none/free' }],
  [
    'office door',
    { ...roof, egressRole: 'exitAccess' },
    'no',
    { clause: 'd', on: 'mechanicalLock/none/free' },
  ],
  [
    'use of the roof not known',
    { egressRole: 'roofDoor' },
    'unknown',
    { clause: 'd', on: 'mechanicalLock/none/free' },
  ],
  ['nothing locks', roof, 'no', { clause: 'd', on: 'noLock/none/free' }],
);
