import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'magnet/safe/sensor';

const hall = {
  egressRole: 'exteriorExit',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
  doorType: 'single',
  latch: 'pushPull',
  roomUse: 'conference',
} as const;

const battery = {
  ...hall,
  occupancyGroup: 'S-1',
  roomUse: 'batteryRoom',
  latch: 'rimExit',
  occupantLoad: 2,
} as const;

const of2024 = { ibc: 2024 } as const;

export const R124Cases = cases(
  ['hall for 50, push and pull', hall, 'yes', { on, basis: of2024, does: 'prohibit' }],
  ['hall for 50, rim exit device', { ...hall, latch: 'rimExit' }, 'yes', { on, basis: of2024 }],
  ['hall for 49', { ...hall, occupantLoad: 49 }, 'no', { on, basis: of2024 }],
  ['school for 50', { ...hall, occupancyGroup: 'E' }, 'yes', { on, basis: of2024 }],
  ['office for 50', { ...hall, occupancyGroup: 'B' }, 'no', { on, basis: of2024 }],
  ['sliding door', { ...hall, doorType: 'slidingAutomatic' }, 'no', { on, basis: of2024 }],
  ['cabinet', { ...hall, egressRole: 'noOccupiedSpace' }, 'no', { on, basis: of2024 }],
  ['battery room', battery, 'yes', { on, basis: of2024 }],
  ['hall for 50, IBC 2021', { ...hall, latch: 'rimExit' }, 'no', { on }],
  ['hall for 50, NFPA 101 alone', hall, 'no', { on, basis: { ibc: null, nfpa101: 2024 } }],
  ['load not known', without(hall, 'occupantLoad'), 'unknown', { on, basis: of2024 }],
  ['bar that releases the magnet', hall, 'no', { on: 'magnet/safe/doorSwitch', basis: of2024 }],
  ...onEach(['boltMotor/safe/sensor', 'shearMagnet/safe/sensor'], 'hall for 50, IBC 2021', hall, 'no'),
);
