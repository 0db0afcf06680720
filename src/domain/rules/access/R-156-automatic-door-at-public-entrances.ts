import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const largeEntrance = all(
  ibc({ from: 2021, readTo: 2024 }),
  yes('publicEntrance'),
  any(
    all(
      is('occupancyGroup', 'A-1', 'A-2', 'A-3', 'A-4'),
      over('buildingOccupantLoad', 'autoDoorAssemblyLoad'),
    ),
    all(is('occupancyGroup', 'B', 'M', 'R-1'), over('buildingOccupantLoad', 'autoDoorOtherLoad')),
  ),
);

export const R156 = defineRule({
  id: 'R-156',
  title: 'Large public entrances need one automatic door',
  family: 'access',
  book: 'ibc',
  cites: [under('automaticEntrances')],
  confidence: 'secondary',
  note: 'Clause read, thresholds, which are loads of the building and not of the door, read second-hand; one article writes "300 or more" where the rest write "over 300".',
  why: 'From the 2021 edition a crowd of visitors means that some of them cannot pull a door open.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(largeEntrance, is('operator', 'none', 'powerAssist')),
      items: ['automaticOperator'],
      says: 'At least one door of this accessible public entrance opens by a full-power or low-energy operator; if another door of the entrance has it, say so.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(largeEntrance, yes('doorsInSeries')),
      says: 'Behind a vestibule one automatic door is needed in each of its two walls.',
    },
  ],
});
