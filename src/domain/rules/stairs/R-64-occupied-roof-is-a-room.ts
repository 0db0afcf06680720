import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, not, over } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { bothCodes, nfpaOnly } from './given.ts';

const usedRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'occupied'));
const roof = { egressRole: 'roofDoor', roofUse: 'occupied', occupantLoad: 100 } as const;
const on = 'mechanicalLock/none/keyInside';

export const R64 = defineRule({
  id: 'R-64',
  title: 'An occupied roof has its way out like a room',
  family: 'stairs',
  book: 'ibc',
  cites: [under('locksAndLatches'), under('exteriorSpaces'), under('freeEgressIbc')],
  confidence: 'secondary',
  why: 'People on a roof terrace leave through this door into the building; locked from the roof it shuts them out over a drop.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: usedRoof,
      says: 'People use this roof: a reviewer confirms that they can always come back in, or that the exterior-space lock of the IBC from 2021 on is met in full.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: usedRoof,
      says: 'The free side of the lock is the roof side; a reader may only guard the way out onto the roof.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(
        usedRoof,
        any(not(ibc({ from: 2021 })), nfpa101(), over('occupantLoad', 'exteriorSpaceLoadIbc')),
      ),
      of: { release: ['keyInside'] },
      says: 'A key lock against people on the roof is known only to the IBC from 2021 on, up to its posted load, and not to NFPA 101.',
    },
  ],
  cases: cases(
    ['roof terrace', roof, 'yes', { clause: 'a', does: 'signOff must' }],
    ['unoccupied roof', { ...roof, roofUse: 'unoccupied' }, 'no', { clause: 'a' }],
    ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
    ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'a' }],
    ['roof terrace', roof, 'yes', { clause: 'b', does: 'caution' }],
    ['unoccupied roof', { ...roof, roofUse: 'unoccupied' }, 'no', { clause: 'b' }],
    ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'b' }],
    ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'b' }],
    ['terrace, IBC 2018', roof, 'yes', { clause: 'c', on, basis: { ibc: 2018 }, does: 'prohibit' }],
    ['terrace, NFPA 101 alone', roof, 'yes', { clause: 'c', on, basis: nfpaOnly }],
    ['terrace, both codes', roof, 'yes', { clause: 'c', on, basis: bothCodes }],
    ['terrace for 100, IBC 2021', roof, 'no', { clause: 'c', on }],
    ['terrace at the load, IBC 2021', { ...roof, occupantLoad: 300 }, 'no', { clause: 'c', on }],
    ['terrace over the load, IBC 2021', { ...roof, occupantLoad: 301 }, 'yes', { clause: 'c', on }],
    [
      'terrace over the load, IBC 2024',
      { ...roof, occupantLoad: 301 },
      'yes',
      { clause: 'c', on, basis: { ibc: 2024 } },
    ],
    [
      'unoccupied roof, IBC 2018',
      { ...roof, roofUse: 'unoccupied' },
      'no',
      { clause: 'c', on, basis: { ibc: 2018 } },
    ],
    [
      'office door, IBC 2018',
      { ...roof, egressRole: 'exitAccess' },
      'no',
      { clause: 'c', on, basis: { ibc: 2018 } },
    ],
    [
      'load not known, IBC 2021',
      { egressRole: 'roofDoor', roofUse: 'occupied' },
      'unknown',
      { clause: 'c', on },
    ],
    [
      'a free lever is not meant',
      roof,
      'no',
      { clause: 'c', on: 'mechanicalLock/none/free', basis: { ibc: 2018 } },
    ],
  ),
});
