import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
} as const;

const hallOf49 = { ...hall, occupantLoad: 49, roomUse: 'conference' } as const;

const open = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
} as const;

const sensors = ['magnet/safe/sensor', 'shearMagnet/safe/sensor', 'boltMotor/safe/sensor'];

const switches = ['magnet/safe/doorSwitch', 'shearMagnet/safe/doorSwitch', 'glassPatchLock/safe/doorSwitch'];

export const R18Cases = cases(
  ...onEach(switches, 'hall for 50', hall, 'yes', {
    clause: 'a',
    does: ['panicHardware', 'doorSwitchHardware'],
  }),
  ['hall for 49', hallOf49, 'no', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
  ['load not known', open, 'unknown', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
  ...onEach(['magnet/safe/sensor', 'exitTrim/secure/free'], 'another release', hall, 'no', 'a'),
  ...onEach(sensors, 'hall for 50, IBC 2021', hall, 'yes', 'b'),
  [
    'hall for 50, IBC 2018',
    hall,
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc: 2018 }, does: 'signOff must' },
  ],
  ['hall for 50, IBC 2024', hall, 'no', { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc: 2024 } }],
  [
    'hall for 100, NFPA 101 alone',
    { ...hall, occupantLoad: 100 },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: 2021 } },
  ],
  [
    'push/pull leaf that gets a lock',
    { ...hall, latch: 'pushPull', readerSides: 'secure' },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  ['hall for 49', hallOf49, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['load not known', open, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  ...onEach(['magnet/safe/doorSwitch', 'exitTrim/secure/free'], 'another release', hall, 'no', 'b'),
  ...onEach(switches, 'hall for 50', hall, 'yes', { clause: 'd', does: 'signOff must' }),
  ['hall for 49', hallOf49, 'no', { clause: 'd', on: 'magnet/safe/doorSwitch' }],
  ['load not known', open, 'unknown', { clause: 'd', on: 'magnet/safe/doorSwitch' }],
  ['another release', hall, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
);
