import { cases, type CaseRow } from '../rule.ts';
import { electricalRoomCases } from './electricalRoomCases.ts';

const basis = { ibc: 2018, nec: null } as const;

const room = {
  doorType: 'single',
  roomUse: 'electricalRoom',
  equipmentAmps: 1200,
  equipmentWidthFt: 7,
  overcurrentDevices: true,
} as const;

const rows: readonly CaseRow[] = [
  ['1,200 A, 7 ft wide', room, 'yes'],
  ['1,199 A', { ...room, equipmentAmps: 1199 }, 'no'],
  ['6 ft wide', { ...room, equipmentWidthFt: 6 }, 'no'],
  ['6.5 ft wide', { ...room, equipmentWidthFt: 6.5 }, 'yes'],
  ['no overcurrent, switching or control devices', { ...room, overcurrentDevices: false }, 'no'],
  ['equipment room', { ...room, roomUse: 'equipment' }, 'yes'],
  ['switchboard in a storage room', { ...room, roomUse: 'storage' }, 'yes'],
  [
    'ordinary office, nothing entered',
    { doorType: 'single', roomUse: 'office', equipmentWidthFt: 7, overcurrentDevices: true },
    'no',
  ],
  [
    'electrical room, amperes not known',
    { doorType: 'single', roomUse: 'electricalRoom', equipmentWidthFt: 7, overcurrentDevices: true },
    'unknown',
  ],
  [
    'equipment room, amperes not known',
    { doorType: 'single', roomUse: 'equipment', equipmentWidthFt: 7, overcurrentDevices: true },
    'unknown',
  ],
  ['coiling door', { ...room, doorType: 'overhead' }, 'no'],
  ['grille', { ...room, doorType: 'grille' }, 'no'],
  ['IBC 2021 is R-76', room, 'no', { basis: { ibc: 2021 } }],
  ['IBC not adopted', room, 'no', { basis: { ibc: null } }],
];

export const R77Cases = cases(...electricalRoomCases(rows, room, basis));
