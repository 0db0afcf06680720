import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const usedRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'occupied'));

export const R64 = defineRule({
  id: 'R-64',
  title: 'An occupied roof needs egress like a room',
  family: 'stairs',
  book: 'ibc',
  cites: [under('locksAndLatches'), under('exteriorSpaces'), under('freeEgressIbc')],
  confidence: 'secondary',
  note: 'Which key lock may stand toward a used roof is judged by R-12 and R-110.',
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
      says: 'The free side of the lock is the roof side; a reader may only control access to the roof.',
    },
  ],
});
