import { cases, type CaseRow } from '../rule.ts';
import { without } from '../without.ts';

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

export const R140Cases = cases(
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
);
