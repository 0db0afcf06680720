import { under } from '../../codes/sections.ts';
import { all, any, atMost, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const allowed = any(
  all(no('groupH'), atMost('occupantLoad', 'otherDoorLoad')),
  all(
    is('roomUse', 'dwellingEntrance', 'dwellingBedroom', 'unitBalcony'),
    is('occupancyGroup', 'R-2', 'R-3'),
  ),
  all(is('roomUse', 'singleToilet'), is('occupancyGroup', 'R-1')),
  all(is('suiteDoor', 'inside'), is('occupancyGroup', 'I-2')),
  is('occupancyGroup', 'I-3'),
  is('roomUse', 'detention'),
);

const sliding = { egressRole: 'exitAccess', doorType: 'slidingManual' } as const;
const office = {
  ...sliding,
  occupantLoad: 12,
  occupancyGroup: 'B',
  roomUse: 'office',
  suiteDoor: 'none',
} as const;
const hotel = { ...office, occupancyGroup: 'R-1' } as const;
const hospital = { ...office, occupancyGroup: 'I-2', roomUse: 'other' } as const;
const underNfpa = { clause: 'b', basis: { nfpa101: 2021 } } as const;

export const R140 = defineRule({
  id: 'R-140',
  title: 'A manual sliding door serves few people',
  family: 'doors',
  book: 'ibc',
  cites: [under('doorSwing'), under('seriesNfpa')],
  confidence: 'secondary',
  note: 'List read secondhand. NFPA 101 leaves it to the occupancy chapter, so it is asked there too.',
  why: 'People pushing in smoke or panic will not slide a door, so it may serve only small loads and a few named rooms.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('doorType', 'slidingManual'), not(allowed)),
      says: 'A manual sliding door may not serve as egress here; a side-hinged door must take its place.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'should',
      when: all(nfpa101(), yes('isEgress'), is('doorType', 'slidingManual')),
      says: 'Under NFPA 101 a sliding door serves as egress only where the occupancy chapter says so; read that chapter.',
    },
  ],
  cases: cases(
    ['office for 11', { ...office, occupantLoad: 11 }, 'yes', { clause: 'a', does: 'prohibit' }],
    ['office for 10', { ...office, occupantLoad: 10 }, 'no', { clause: 'a' }],
    [
      'high-hazard room for 3',
      { ...office, occupantLoad: 3, occupancyGroup: 'H-3', roomUse: 'storage' },
      'yes',
      { clause: 'a' },
    ],
    ...(['R-2', 'R-3'] as const).flatMap((occupancyGroup) =>
      (['dwellingEntrance', 'dwellingBedroom', 'unitBalcony'] as const).map(
        (roomUse): CaseRow => [
          'in a dwelling unit',
          { ...office, occupancyGroup, roomUse },
          'no',
          { clause: 'a' },
        ],
      ),
    ),
    [
      'lobby of a block of flats',
      { ...office, occupancyGroup: 'R-2', roomUse: 'lobby' },
      'yes',
      { clause: 'a' },
    ],
    ['bedroom of a hotel unit', { ...hotel, roomUse: 'dwellingBedroom' }, 'yes', { clause: 'a' }],
    ['bathroom of a hotel unit', { ...hotel, roomUse: 'singleToilet' }, 'no', { clause: 'a' }],
    ['toilet of an office', { ...office, roomUse: 'singleToilet' }, 'yes', { clause: 'a' }],
    ['intensive-care room in a suite', { ...hospital, suiteDoor: 'inside' }, 'no', { clause: 'a' }],
    ['suite entrance', { ...hospital, suiteDoor: 'perimeter' }, 'yes', { clause: 'a' }],
    [
      'inside a suite of a clinic',
      { ...office, roomUse: 'other', suiteDoor: 'inside' },
      'yes',
      { clause: 'a' },
    ],
    ['jail', { ...office, occupancyGroup: 'I-3', roomUse: 'other' }, 'no', { clause: 'a' }],
    ['holding room', { ...office, roomUse: 'detention' }, 'no', { clause: 'a' }],
    [
      'automatic sliding door',
      { ...office, doorType: 'slidingAutomatic', occupantLoad: 90 },
      'no',
      { clause: 'a' },
    ],
    ['cabinet', { ...office, egressRole: 'noOccupiedSpace', occupantLoad: 90 }, 'no', { clause: 'a' }],
    ['load not known', without(office, 'occupantLoad'), 'unknown', { clause: 'a' }],
    ['NFPA 101 adopted', sliding, 'yes', { ...underNfpa, does: 'signOff should' }],
    ['IBC alone', sliding, 'no', { clause: 'b' }],
    ['hinged door', { ...sliding, doorType: 'single' }, 'no', underNfpa],
    ['cabinet', { ...sliding, egressRole: 'noOccupiedSpace' }, 'no', underNfpa],
    ['role not known', { doorType: 'slidingManual' }, 'unknown', underNfpa],
  ),
});
