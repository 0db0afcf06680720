import { cases, type CaseRow } from '../rule.ts';
import { electricalRoomCases } from './electricalRoomCases.ts';

const room = {
  doorType: 'single',
  roomUse: 'electricalRoom',
  equipmentAmps: 800,
  equipmentVolts: 480,
  overcurrentDevices: true,
  doorToWorkingSpaceFt: 24,
} as const;

const old = { ibc: 2018, nec: null } as const;

const ibcOnly = { ibc: 2021, nec: null } as const;

const necOnly = { ibc: null, nec: 2020 } as const;

const vault = { doorType: 'single', roomUse: 'transformerVault' } as const;

const rows: readonly CaseRow[] = [
  ['800 A, 24 ft away', room, 'yes'],
  ['799 A', { ...room, equipmentAmps: 799 }, 'no'],
  ['25 ft away', { ...room, doorToWorkingSpaceFt: 25 }, 'no'],
  ['no overcurrent, switching or control devices', { ...room, overcurrentDevices: false }, 'no'],
  ['1,000 V', { ...room, equipmentAmps: 100, equipmentVolts: 1000 }, 'no'],
  ['1,001 V', { ...room, equipmentAmps: 100, equipmentVolts: 1001 }, 'yes'],
  [
    '1,001 V without overcurrent devices',
    { ...room, equipmentAmps: 100, equipmentVolts: 1001, overcurrentDevices: false },
    'yes',
  ],
  ['equipment room', { ...room, roomUse: 'equipment' }, 'yes'],
  ['switchboard in a storage room', { ...room, roomUse: 'storage' }, 'yes'],
  [
    'storage room, only the voltage entered',
    { doorType: 'single', roomUse: 'storage', equipmentVolts: 1001, doorToWorkingSpaceFt: 24 },
    'yes',
  ],
  [
    'storage room, only the amperes entered',
    {
      doorType: 'single',
      roomUse: 'storage',
      equipmentAmps: 800,
      overcurrentDevices: true,
      doorToWorkingSpaceFt: 24,
    },
    'yes',
  ],
  [
    'ordinary office, nothing entered',
    { doorType: 'single', roomUse: 'office', overcurrentDevices: true, doorToWorkingSpaceFt: 24 },
    'no',
  ],
  [
    'electrical room, amperes not known',
    { doorType: 'single', roomUse: 'electricalRoom', overcurrentDevices: true, doorToWorkingSpaceFt: 24 },
    'unknown',
  ],
  [
    'equipment room, amperes not known',
    { doorType: 'single', roomUse: 'equipment', overcurrentDevices: true, doorToWorkingSpaceFt: 24 },
    'unknown',
  ],
  ['coiling door for the gear', { ...room, doorType: 'overhead' }, 'no'],
  ['grille', { ...room, doorType: 'grille' }, 'no'],
  ['NEC alone, 800 A', room, 'yes', { basis: necOnly }],
  ['NEC alone, 799 A', { ...room, equipmentAmps: 799 }, 'no', { basis: necOnly }],
  ['NEC alone, no devices', { ...room, overcurrentDevices: false }, 'no', { basis: necOnly }],
  ['IBC 2021 alone, 800 A', room, 'yes', { basis: ibcOnly }],
  ['IBC 2021 alone, 799 A', { ...room, equipmentAmps: 799 }, 'no', { basis: ibcOnly }],
  ['IBC 2021 alone, no devices', { ...room, overcurrentDevices: false }, 'no', { basis: ibcOnly }],
  [
    'IBC 2021 alone, 1,001 V',
    { ...room, equipmentAmps: 100, equipmentVolts: 1001 },
    'no',
    { basis: ibcOnly },
  ],
  ['IBC 2024 alone, 800 A', room, 'yes', { basis: { ibc: 2024, nec: null } }],
  ['IBC 2018 alone, 1,200 A is R-77', { ...room, equipmentAmps: 1200 }, 'no', { basis: old }],
  ['IBC 2018 with the NEC, 800 A', room, 'yes', { basis: { ibc: 2018 } }],
  ['neither code', room, 'no', { basis: { ibc: null, nec: null } }],
  ['transformer vault', vault, 'yes'],
  ['battery room', { ...vault, roomUse: 'batteryRoom' }, 'yes'],
  ['modular data center', { ...vault, roomUse: 'modularDataCenter' }, 'yes'],
  ['vault, 40 ft from the gear', { ...vault, doorToWorkingSpaceFt: 40 }, 'yes'],
  ['vault, NEC alone', vault, 'yes', { basis: necOnly }],
  ['vault, IBC 2021 alone', vault, 'yes', { basis: ibcOnly }],
  ['vault, IBC 2018 alone', vault, 'no', { basis: old }],
  ['coiling door of the vault', { ...vault, doorType: 'overhead' }, 'no'],
  ['grille of the vault', { ...vault, doorType: 'grille' }, 'no'],
];

export const R76Cases = cases(...electricalRoomCases(rows, room, {}));
