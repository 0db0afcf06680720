import { cases, type CaseRow } from '../rule.ts';

const grille = { egressRole: 'exteriorExit', doorType: 'grille' } as const;

const coiling = { ...grille, doorType: 'overhead' } as const;

const mainGrille = { ...grille, mainDoor: true } as const;

const sideGrille = { ...grille, mainDoor: false } as const;

const office = { ...coiling, roomUse: 'office', occupancyGroup: 'B', occupantLoad: 10 } as const;

const shop = { ...office, roomUse: 'other', occupancyGroup: 'M' } as const;

export const R135Cases = cases(
  [
    'grille at the main exit of a hall',
    { ...mainGrille, occupancyGroup: 'A-3' },
    'yes',
    { clause: 'a', does: 'prohibit' },
  ],
  ['grille at a second exit of a shop', { ...sideGrille, occupancyGroup: 'M' }, 'yes', { clause: 'a' }],
  ...(['B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'] as const).map(
    (occupancyGroup): CaseRow => [
      'grille at the main exit',
      { ...mainGrille, occupancyGroup },
      'no',
      { clause: 'a' },
    ],
  ),
  [
    'grille before a cabinet',
    { ...sideGrille, egressRole: 'noOccupiedSpace', occupancyGroup: 'A-3' },
    'no',
    { clause: 'a' },
  ],
  [
    'hinged door of a hall',
    { ...sideGrille, doorType: 'single', occupancyGroup: 'A-3' },
    'no',
    { clause: 'a' },
  ],
  ['grille, group not known', mainGrille, 'unknown', { clause: 'a' }],
  [
    'grilles in most exits',
    { ...grille, barriersOverHalf: true },
    'yes',
    { clause: 'b', does: 'modify doorSupplier' },
  ],
  ['other exits are doors', { ...grille, barriersOverHalf: false }, 'no', { clause: 'b' }],
  ['hinged door', { ...grille, doorType: 'pair', barriersOverHalf: true }, 'no', { clause: 'b' }],
  ['nothing to leave', { ...grille, egressRole: 'sealedOff', barriersOverHalf: true }, 'no', { clause: 'b' }],
  ['other exits not counted', grille, 'unknown', { clause: 'b' }],
  ['grille on a way out', grille, 'yes', { clause: 'c', does: ['fullOpenMeans'] }],
  ['coiling door', coiling, 'no', { clause: 'c' }],
  ['grille before a cabinet', { ...grille, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'c' }],
  ['door type not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'c' }],
  [
    'coiling door of an office for 11',
    { ...office, occupantLoad: 11 },
    'yes',
    { clause: 'd', does: 'prohibit' },
  ],
  ['coiling door of an office for 10', office, 'no', { clause: 'd' }],
  ['coiling door of a store for 10', { ...office, roomUse: 'storage' }, 'no', { clause: 'd' }],
  ...(['F-1', 'F-2', 'S-1', 'S-2', 'U'] as const).map(
    (occupancyGroup): CaseRow => [
      'coiling door of a workshop or garage for 10',
      { ...shop, occupancyGroup },
      'no',
      { clause: 'd' },
    ],
  ),
  ['coiling door of a small shop', shop, 'yes', { clause: 'd' }],
  [
    'coiling door of a store of hazardous goods',
    { ...office, roomUse: 'storage', occupancyGroup: 'H-3', occupantLoad: 2 },
    'yes',
    { clause: 'd' },
  ],
  [
    'coiling door nobody needs to leave by',
    { ...shop, egressRole: 'sealedOff', occupantLoad: 90 },
    'no',
    { clause: 'd' },
  ],
  ['hinged door', { ...shop, doorType: 'single', occupantLoad: 90 }, 'no', { clause: 'd' }],
  ['load not known', { ...coiling, roomUse: 'storage', occupancyGroup: 'S-1' }, 'unknown', { clause: 'd' }],
  ['grille on a way out', grille, 'yes', { clause: 'e', does: 'signOff must' }],
  ['coiling door on a way out', coiling, 'yes', { clause: 'e' }],
  ['hinged door', { ...grille, doorType: 'single' }, 'no', { clause: 'e' }],
  ['coiling door nobody leaves by', { ...coiling, egressRole: 'sealedOff' }, 'no', { clause: 'e' }],
  ['role not known', { doorType: 'grille' }, 'unknown', { clause: 'e' }],
);
