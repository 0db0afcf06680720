import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';
import { without } from '../without.ts';

const on = 'mechanicalLock/none/keyInside';

const shop = {
  egressRole: 'exteriorExit',
  mainDoor: true,
  occupancyGroup: 'M',
  occupantLoad: 40,
  roomUse: 'other',
} as const;

const openMainDoor = {
  egressRole: 'exteriorExit',
  occupancyGroup: 'M',
  occupantLoad: 40,
  roomUse: 'other',
} as const;

const terrace = {
  egressRole: 'exteriorSpace',
  mainDoor: false,
  occupancyGroup: 'B',
  occupantLoad: 100,
  roomUse: 'other',
} as const;

const roof = { ...terrace, egressRole: 'roofDoor', roofUse: 'unoccupied' } as const;

const terraceRoof = { ...roof, roofUse: 'occupied' } as const;

const church = { ...shop, occupancyGroup: 'A-3', occupantLoad: 800, placeOfWorship: true } as const;

const nfpaOnly = { ibc: null, nfpa101: 2021 } as const;

const neither = { ibc: null, nfpa101: null } as const;

const groups = ['B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'] as const;

const mainDoors = (
  clause: string,
  limit: number,
  lawful: 'yes' | 'no',
  basis: object,
): readonly CaseRow[] => {
  const at = { clause, on, basis };
  const unlawful = lawful === 'yes' ? 'no' : 'yes';
  return [
    ...groups.map(
      (occupancyGroup): CaseRow => [`main door, ${occupancyGroup}`, { ...shop, occupancyGroup }, lawful, at],
    ),
    ['assembly at the load', { ...shop, occupancyGroup: 'A-2', occupantLoad: limit }, lawful, at],
    [
      'assembly over the load',
      { ...shop, occupancyGroup: 'A-2', occupantLoad: limit + 1, placeOfWorship: false },
      unlawful,
      at,
    ],
    ['shop over the assembly load', { ...shop, occupantLoad: limit + 1 }, lawful, at],
    ['school', { ...shop, occupancyGroup: 'E' }, unlawful, at],
    ['side door of a hall', { ...shop, occupancyGroup: 'A-2', mainDoor: false }, unlawful, at],
    ['side door of a shop', { ...shop, mainDoor: false }, unlawful, at],
    ['main door or not: not known', openMainDoor, 'unknown', at],
    ['side door of a church', { ...church, mainDoor: false }, unlawful, at],
  ];
};

export const R12Cases = cases(
  ...doing({ c: ['keyLockMainDoor', 'signKeyLock'], e: ['keyLockMainDoor', 'signKeyLockBuilding'] }, [
    ...mainDoors('a', 300, 'no', {}),
    [
      'no code chosen: the same list',
      { ...shop, mainDoor: false },
      'yes',
      { clause: 'a', on, basis: neither, does: 'prohibit' },
    ],
    ['NFPA 101 alone is clause b', { ...shop, mainDoor: false }, 'no', { clause: 'a', on, basis: nfpaOnly }],
    ['both codes', { ...shop, mainDoor: false }, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
    ['cabinet', { ...shop, mainDoor: false, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on }],
    ['terrace of 300, 2021', { ...terrace, occupantLoad: 300 }, 'no', { clause: 'a', on }],
    ['terrace of 301, 2021', { ...terrace, occupantLoad: 301 }, 'yes', { clause: 'a', on }],
    ['terrace, 2024', terrace, 'no', { clause: 'a', on, basis: { ibc: 2024 } }],
    ['terrace, 2018 has no such case', terrace, 'yes', { clause: 'a', on, basis: { ibc: 2018 } }],
    ['egress court is no such space', { ...terrace, egressRole: 'egressCourt' }, 'yes', { clause: 'a', on }],
    [
      'balcony of one unit, 2021',
      { ...terrace, egressRole: 'exitAccess', roomUse: 'unitBalcony' },
      'no',
      { clause: 'a', on },
    ],
    [
      'office terrace, 2021',
      { ...terrace, egressRole: 'exitAccess', roomUse: 'officeTerrace' },
      'no',
      { clause: 'a', on },
    ],
    [
      'balcony of one unit, 2018',
      { ...terrace, egressRole: 'exitAccess', roomUse: 'unitBalcony' },
      'yes',
      { clause: 'a', on, basis: { ibc: 2018 } },
    ],
    ['detention room', { ...shop, mainDoor: false, roomUse: 'detention' }, 'no', { clause: 'a', on }],
    ['prison', { ...shop, mainDoor: false, occupancyGroup: 'I-3' }, 'no', { clause: 'a', on }],
    ...onEach(
      ['gateLock/secure/keyInside', 'gateLock/safe/keyInside'],
      'side door',
      { ...shop, mainDoor: false },
      'yes',
      'a',
    ),
    ...onEach(
      ['mechanicalLock/none/free', 'mechanicalLock/none/clinical'],
      'no key needed, or staff hold it',
      { ...shop, mainDoor: false },
      'no',
      'a',
    ),
    ['roof that nobody uses', roof, 'no', { clause: 'a', on }],
    ['roof terrace of 300, 2021', { ...terraceRoof, occupantLoad: 300 }, 'no', { clause: 'a', on }],
    ['roof terrace of 301, 2021', { ...terraceRoof, occupantLoad: 301 }, 'yes', { clause: 'a', on }],
    ['roof terrace, 2018', terraceRoof, 'yes', { clause: 'a', on, basis: { ibc: 2018 } }],
    ['room door beside it', { ...terraceRoof, egressRole: 'exitAccess' }, 'yes', { clause: 'a', on }],
    ['use of the roof not known', { ...terrace, egressRole: 'roofDoor' }, 'unknown', { clause: 'a', on }],
    ['room door, roof not used', { ...roof, egressRole: 'exitAccess' }, 'yes', { clause: 'a', on }],
    ['main door of a church for 800', church, 'no', { clause: 'a', on }],
    ['worship not asked, 800 people', without(church, 'placeOfWorship'), 'unknown', { clause: 'a', on }],
    ['main door of a church for 800', church, 'yes', { clause: 'b', on, basis: nfpaOnly }],
    ['main door of a church for 800', church, 'yes', { clause: 'c', on }],
    ['main door of a church for 800', church, 'no', { clause: 'e', on, basis: nfpaOnly }],
    ...(['c', 'd'] as const).flatMap((clause): readonly CaseRow[] => [
      ['side door of a church', { ...church, mainDoor: false }, 'no', { clause, on }],
      ['chapel of a school', { ...church, occupancyGroup: 'E' }, 'no', { clause, on }],
      ['church for 800, no code chosen', church, 'yes', { clause, on, basis: neither }],
      ['church for 800, both codes', church, 'yes', { clause, on, basis: { nfpa101: 2021 } }],
    ]),
    ['main door of a church for 800', church, 'yes', { clause: 'd', on }],
    ['church for 800, NFPA 101 alone', church, 'no', { clause: 'd', on, basis: nfpaOnly }],
    ...mainDoors('b', 500, 'no', nfpaOnly),
    ['roof that nobody uses', roof, 'no', { clause: 'b', on, basis: nfpaOnly }],
    ['roof that people use', terraceRoof, 'yes', { clause: 'b', on, basis: nfpaOnly, does: 'prohibit' }],
    ['IBC alone', { ...shop, mainDoor: false }, 'no', { clause: 'b', on }],
    ['both codes', { ...shop, mainDoor: false }, 'yes', { clause: 'b', on, basis: { nfpa101: 2021 } }],
    [
      'cabinet',
      { ...shop, mainDoor: false, egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'b', on, basis: nfpaOnly },
    ],
    ['terrace has no case there', terrace, 'yes', { clause: 'b', on, basis: nfpaOnly }],
    [
      'detention room',
      { ...shop, mainDoor: false, roomUse: 'detention' },
      'no',
      { clause: 'b', on, basis: nfpaOnly },
    ],
    [
      'prison',
      { ...shop, mainDoor: false, occupancyGroup: 'I-3' },
      'no',
      { clause: 'b', on, basis: nfpaOnly },
    ],
    [
      'lever',
      { ...shop, mainDoor: false },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/free', basis: nfpaOnly },
    ],
    ...mainDoors('c', 500, 'yes', {}),
    ['cabinet', { ...shop, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'c', on }],
    ['lever', shop, 'no', { clause: 'c', on: 'mechanicalLock/none/free' }],
    ['no code chosen', shop, 'yes', { clause: 'c', on, basis: neither }],
    ['both codes', shop, 'yes', { clause: 'c', on, basis: { nfpa101: 2021 } }],
    ['NFPA 101 alone is clause e', shop, 'no', { clause: 'c', on, basis: nfpaOnly }],
    ...mainDoors('e', 500, 'yes', nfpaOnly),
    ['both codes', shop, 'yes', { clause: 'e', on, basis: { nfpa101: 2021 } }],
    ['IBC alone', shop, 'no', { clause: 'e', on }],
    ['cabinet', { ...shop, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'e', on, basis: nfpaOnly }],
    ['lever', shop, 'no', { clause: 'e', on: 'mechanicalLock/none/free', basis: nfpaOnly }],
    ...mainDoors('d', 500, 'yes', {}),
    ['terrace of 300', { ...terrace, occupantLoad: 300 }, 'yes', { clause: 'd', on, does: 'signOff must' }],
    ['terrace of 301', { ...terrace, occupantLoad: 301 }, 'no', { clause: 'd', on }],
    ['roof terrace of 300', { ...terraceRoof, occupantLoad: 300 }, 'yes', { clause: 'd', on }],
    ['roof that nobody uses', roof, 'no', { clause: 'd', on }],
    ['room door, roof used', { ...terraceRoof, egressRole: 'exitAccess' }, 'no', { clause: 'd', on }],
    [
      'room door of 300',
      { ...terrace, egressRole: 'exitAccess', occupantLoad: 300 },
      'no',
      { clause: 'd', on },
    ],
    [
      'balcony of one unit',
      { ...terrace, egressRole: 'exitAccess', roomUse: 'unitBalcony' },
      'yes',
      { clause: 'd', on },
    ],
    [
      'office terrace',
      { ...terrace, egressRole: 'exitAccess', roomUse: 'officeTerrace' },
      'yes',
      { clause: 'd', on },
    ],
    ['cabinet', { ...shop, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'd', on }],
    ['lever', shop, 'no', { clause: 'd', on: 'mechanicalLock/none/free' }],
  ]),
);
