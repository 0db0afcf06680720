import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-1', buildingOccupantLoad: 301, operator: 'none' },
      'yes',
      { clause: 'a', does: ['automaticOperator'] },
    ],
    [
      'hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-2', buildingOccupantLoad: 301, operator: 'none' },
      'yes',
      { clause: 'a' },
    ],
    [
      'hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-3', buildingOccupantLoad: 301, operator: 'none' },
      'yes',
      { clause: 'a' },
    ],
    [
      'hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-4', buildingOccupantLoad: 301, operator: 'none' },
      'yes',
      { clause: 'a' },
    ],
    [
      'hall for 300',
      { publicEntrance: true, occupancyGroup: 'A-3', buildingOccupantLoad: 300, operator: 'none' },
      'no',
      { clause: 'a' },
    ],
    [
      'shop, office or hotel for 501',
      { publicEntrance: true, occupancyGroup: 'B', buildingOccupantLoad: 501, operator: 'powerAssist' },
      'yes',
      { clause: 'a' },
    ],
    [
      'shop, office or hotel for 501',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 501, operator: 'powerAssist' },
      'yes',
      { clause: 'a' },
    ],
    [
      'shop, office or hotel for 501',
      { publicEntrance: true, occupancyGroup: 'R-1', buildingOccupantLoad: 501, operator: 'powerAssist' },
      'yes',
      { clause: 'a' },
    ],
    [
      'shop for 500',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 500, operator: 'none' },
      'no',
      { clause: 'a' },
    ],
    [
      'school for 900',
      { publicEntrance: true, occupancyGroup: 'E', buildingOccupantLoad: 900, operator: 'none' },
      'no',
      { clause: 'a' },
    ],
    [
      'staff entrance',
      { publicEntrance: false, occupancyGroup: 'M', buildingOccupantLoad: 900, operator: 'none' },
      'no',
      { clause: 'a' },
    ],
    [
      'automatic already',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, operator: 'lowEnergy' },
      'no',
      { clause: 'a' },
    ],
    [
      'automatic already',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, operator: 'fullPower' },
      'no',
      { clause: 'a' },
    ],
    [
      'IBC 2024',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, operator: 'none' },
      'yes',
      { clause: 'a', basis: { ibc: 2024 } },
    ],
    [
      'IBC 2018',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, operator: 'none' },
      'no',
      { clause: 'a', basis: { ibc: 2018 } },
    ],
    [
      'NFPA 101 alone',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, operator: 'none' },
      'no',
      { clause: 'a', basis: { ibc: null, nfpa101: 2021 } },
    ],
    [
      'operator not surveyed',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900 },
      'unknown',
      { clause: 'a' },
    ],
    [
      'vestibule of a hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-1', buildingOccupantLoad: 301, doorsInSeries: true },
      'yes',
      { clause: 'b', does: 'caution' },
    ],
    [
      'vestibule of a hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-2', buildingOccupantLoad: 301, doorsInSeries: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'vestibule of a hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-3', buildingOccupantLoad: 301, doorsInSeries: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'vestibule of a hall for 301',
      { publicEntrance: true, occupancyGroup: 'A-4', buildingOccupantLoad: 301, doorsInSeries: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'hall for 300',
      { publicEntrance: true, occupancyGroup: 'A-3', buildingOccupantLoad: 300, doorsInSeries: true },
      'no',
      { clause: 'b' },
    ],
    [
      'vestibule of a shop, office or hotel for 501',
      { publicEntrance: true, occupancyGroup: 'B', buildingOccupantLoad: 501, doorsInSeries: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'vestibule of a shop, office or hotel for 501',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 501, doorsInSeries: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'vestibule of a shop, office or hotel for 501',
      { publicEntrance: true, occupancyGroup: 'R-1', buildingOccupantLoad: 501, doorsInSeries: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'shop for 500',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 500, doorsInSeries: true },
      'no',
      { clause: 'b' },
    ],
    [
      'school',
      { publicEntrance: true, occupancyGroup: 'E', buildingOccupantLoad: 900, doorsInSeries: true },
      'no',
      { clause: 'b' },
    ],
    [
      'staff entrance',
      { publicEntrance: false, occupancyGroup: 'M', buildingOccupantLoad: 900, doorsInSeries: true },
      'no',
      { clause: 'b' },
    ],
    [
      'no vestibule',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, doorsInSeries: false },
      'no',
      { clause: 'b' },
    ],
    [
      'IBC 2024',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, doorsInSeries: true },
      'yes',
      { clause: 'b', basis: { ibc: 2024 } },
    ],
    [
      'IBC 2018',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, doorsInSeries: true },
      'no',
      { clause: 'b', basis: { ibc: 2018 } },
    ],
    [
      'NFPA 101 alone',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900, doorsInSeries: true },
      'no',
      { clause: 'b', basis: { ibc: null, nfpa101: 2021 } },
    ],
    [
      'vestibule not surveyed',
      { publicEntrance: true, occupancyGroup: 'M', buildingOccupantLoad: 900 },
      'unknown',
      { clause: 'b' },
    ],
  ),
});
