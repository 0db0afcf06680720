import { text, under } from '../../codes/sections.ts';
import { all, is, nfpa101 } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { nfpaOnly } from './given.ts';

const emptyRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'unoccupied'));
const roof = { egressRole: 'roofDoor', roofUse: 'unoccupied' } as const;

export const R63 = defineRule({
  id: 'R-63',
  title: 'An unoccupied roof may be locked',
  family: 'stairs',
  book: 'ibc',
  cites: [under('locksAndLatches'), text('nfpa101', '7.2.1.5', 'Roof access from stairs')],
  confidence: 'secondary',
  note: 'A key on the stair side is accepted by this rule but judged with all keyed locks in R-12.',
  why: 'No one but workers is on such a roof, so it needs no re-entry and no free access.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: emptyRoof,
      of: { release: ['free', 'keyInside'] },
      says: 'The roof is not occupied: this door may be locked both toward the roof and from the roof.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(nfpa101(), emptyRoof),
      says: 'NFPA 101 wants one of two things: no one gets onto the roof from the stair, or anyone there can come back in.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: emptyRoof,
      says: 'Ask the local fire department how it wants to reach the roof; many keep a practice of their own.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: emptyRoof,
      of: { not: { family: ['none'] } },
      says: 'A worker who lets the door close is stranded on the roof: give the roof side a key, a reader or a telephone, or a stop with an alarm, and say so on a sign.',
    },
  ],
  cases: cases(
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
  ),
});
