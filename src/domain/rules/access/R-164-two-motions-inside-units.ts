import { under } from '../../codes/sections.ts';
import { all, any, ibc, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const twoMotions = any(is('latch', 'boredPlusDeadbolt'), is('existingArrangement', 'deadboltPlusLatch'));

export const R164 = defineRule({
  id: 'R-164',
  title: 'Latch and separate bolt on a single toilet or a bedroom',
  family: 'access',
  book: 'ibc',
  cites: [under('unlatching'), under('locksAndLatches')],
  confidence: 'secondary',
  note: 'The 2027 text expected to allow it was read in quotation; it is not adopted here.',
  why: 'The two-motion exception covers only the unit entrance door, not the rooms inside.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: all(ibc(), is('roomUse', 'singleToilet', 'dwellingBedroom'), twoMotions),
      says: 'Latch and bolt must retract in one motion: install a lock that retracts both, or remove the bolt.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        any(
          is('roomUse', 'dwellingBedroom'),
          all(is('roomUse', 'singleToilet'), is('occupancyGroup', 'R-1', 'R-2', 'R-3')),
        ),
        twoMotions,
      ),
      says: 'Inside a private unit a reviewer says whether the second motion must go.',
    },
  ],
});
