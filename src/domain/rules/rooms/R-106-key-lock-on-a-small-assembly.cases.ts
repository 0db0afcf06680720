import { cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'mechanicalLock/none/keyInside';

const hall = {
  occupancyGroup: 'A-3',
  mainDoor: true,
  occupantLoad: 300,
  egressRole: 'exteriorExit',
  roomUse: 'conference',
} as const;

const side = { ...hall, mainDoor: false } as const;

const church = { ...hall, occupantLoad: 301, placeOfWorship: true } as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R106Cases = cases(
  ['hall for 300', hall, 'yes', { clause: 'a', on, does: 'permit' }],
  ['hall for 301', { ...hall, occupantLoad: 301 }, 'no', { clause: 'a', on }],
  ['side door', side, 'no', { clause: 'a', on }],
  ['office', { ...hall, occupancyGroup: 'B' }, 'no', { clause: 'a', on }],
  ['NFPA 101 alone', hall, 'no', { clause: 'a', on, basis: alone }],
  ['load not known', without(hall, 'occupantLoad'), 'unknown', { clause: 'a', on }],
  ['a free bar', hall, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['side door', side, 'yes', { clause: 'b', on, does: 'prohibit' }],
  ['main door', hall, 'no', { clause: 'b', on }],
  ['shop side door', { ...side, occupancyGroup: 'M' }, 'no', { clause: 'b', on }],
  ['terrace door, R-110', { ...side, egressRole: 'exteriorSpace' }, 'no', { clause: 'b', on }],
  [
    'roof terrace, R-110',
    { ...side, egressRole: 'roofDoor', roofUse: 'occupied' },
    'no',
    { clause: 'b', on },
  ],
  [
    'roof nobody uses',
    { ...side, egressRole: 'roofDoor', roofUse: 'unoccupied' },
    'yes',
    { clause: 'b', on },
  ],
  ['side door, roof used', { ...side, roofUse: 'occupied' }, 'yes', { clause: 'b', on }],
  ['balcony of one unit', { ...side, roomUse: 'unitBalcony' }, 'no', { clause: 'b', on }],
  ['terrace of one office', { ...side, roomUse: 'officeTerrace' }, 'no', { clause: 'b', on }],
  ['side door, NFPA 101 alone', side, 'no', { clause: 'b', on, basis: alone }],
  ['main or not unknown', without(hall, 'mainDoor'), 'unknown', { clause: 'b', on }],
  ['a free bar', side, 'no', { clause: 'b', on: 'exitTrim/secure/free' }],
  ['church for 301', church, 'yes', { clause: 'c', on, does: 'permit' }],
  ['church for 300 is clause a', { ...church, occupantLoad: 300 }, 'no', { clause: 'c', on }],
  ['theater for 301', { ...church, placeOfWorship: false }, 'no', { clause: 'c', on }],
  ['side door of the church', { ...church, mainDoor: false }, 'no', { clause: 'c', on }],
  ['chapel of an office', { ...church, occupancyGroup: 'B' }, 'no', { clause: 'c', on }],
  ['NFPA 101 alone', church, 'no', { clause: 'c', on, basis: alone }],
  ['worship not asked', without(church, 'placeOfWorship'), 'unknown', { clause: 'c', on }],
  ['a free bar', church, 'no', { clause: 'c', on: 'exitTrim/secure/free' }],
);
