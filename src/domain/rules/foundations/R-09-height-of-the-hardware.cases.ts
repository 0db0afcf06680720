import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const room = {
  egressRole: 'exitAccess',
  poolBarrierGate: false,
  workStatus: 'new',
  leafMaterial: 'hollowMetal',
  doorType: 'single',
} as const;

const gate = { ...room, poolBarrierGate: true, doorType: 'gateSwing', leafMaterial: 'gateFramed' } as const;

const on = 'mortiseLock/secure/free';

const at = (clause: string) => ({ clause, on });

export const R09Cases = cases(
  ['height not measured: said so', room, 'yes', { ...at('c'), does: 'caution' }],
  ['height measured', { ...room, egressHardwareHeightIn: 40 }, 'no', at('c')],
  ['cabinet, nothing measured', { ...room, egressRole: 'noOccupiedSpace' }, 'no', at('c')],
  ['role not known', { poolBarrierGate: false }, 'unknown', at('c')],
  [
    'role not known, too high',
    { poolBarrierGate: false, workStatus: 'new', egressHardwareHeightIn: 60 },
    'unknown',
    at('a'),
  ],
  ...onEach(
    ['mortiseLock/safe/stairReentry', 'magnet/safe/doorSwitch', 'delayedExitDevice/safe/delayed'],
    'height not measured',
    room,
    'yes',
    'c',
  ),
  [
    'room door said to be a pool gate',
    { ...room, poolBarrierGate: true, egressHardwareHeightIn: 54 },
    'yes',
    { ...at('a'), does: 'modify locksmith' },
  ],
  [
    'room door said to be a pool gate',
    { ...room, poolBarrierGate: true, egressHardwareHeightIn: 54 },
    'no',
    at('b'),
  ],
  ['sliding pool gate', { ...gate, doorType: 'gateSlide', egressHardwareHeightIn: 54 }, 'no', at('a')],
  ['a sensor has no lever', room, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
  [
    'sliding pool gate',
    { ...gate, doorType: 'gateSlide', egressHardwareHeightIn: 54 },
    'yes',
    { ...at('b'), does: 'signOff must' },
  ],
  ['just too low', { ...room, egressHardwareHeightIn: 33.9375 }, 'yes', at('a')],
  ['lowest allowed', { ...room, egressHardwareHeightIn: 34 }, 'no', at('a')],
  ['highest allowed', { ...room, egressHardwareHeightIn: 48 }, 'no', at('a')],
  ['just too high', { ...room, egressHardwareHeightIn: 48.0625 }, 'yes', at('a')],
  ['height not measured', room, 'no', at('a')],
  ['cabinet', { ...room, egressRole: 'noOccupiedSpace', egressHardwareHeightIn: 60 }, 'no', at('a')],
  ['pool gate at its limit', { ...gate, egressHardwareHeightIn: 54 }, 'no', at('a')],
  ['pool gate over its limit', { ...gate, egressHardwareHeightIn: 54.0625 }, 'yes', at('a')],
  ['pool gate too low', { ...gate, egressHardwareHeightIn: 33.9375 }, 'yes', at('a')],
  ['other gate', { ...gate, poolBarrierGate: false, egressHardwareHeightIn: 54 }, 'yes', at('a')],
  [
    'existing glass door without stiles',
    { ...room, workStatus: 'existing', leafMaterial: 'glassFrameless', egressHardwareHeightIn: 3 },
    'no',
    at('a'),
  ],
  [
    'altered glass door without stiles',
    { ...room, workStatus: 'altered', leafMaterial: 'glassFrameless', egressHardwareHeightIn: 3 },
    'no',
    at('a'),
  ],
  [
    'new glass door without stiles',
    { ...room, leafMaterial: 'glassFrameless', egressHardwareHeightIn: 3 },
    'yes',
    at('a'),
  ],
  ['existing metal door', { ...room, workStatus: 'existing', egressHardwareHeightIn: 60 }, 'yes', at('a')],
  [
    'existing coiling door',
    {
      ...room,
      workStatus: 'existing',
      doorType: 'overhead',
      leafMaterial: 'rollingSteel',
      egressHardwareHeightIn: 3,
    },
    'no',
    at('a'),
  ],
  [
    'existing grille',
    {
      ...room,
      workStatus: 'existing',
      doorType: 'grille',
      leafMaterial: 'rollingSteel',
      egressHardwareHeightIn: 3,
    },
    'no',
    at('a'),
  ],
  ...onEach(
    [
      'strikeRim/secure/free',
      'exitTrim/safe/stairReentry',
      'magnet/safe/doorSwitch',
      'delayedExitDevice/safe/delayed',
    ],
    'hardware must be worked',
    { ...room, egressHardwareHeightIn: 60 },
    'yes',
    'a',
  ),
  ...onEach(
    ['magnet/safe/sensor', 'mechanicalLock/none/keyInside'],
    'the old lever would stay where it is',
    { ...room, egressHardwareHeightIn: 60 },
    'yes',
    'a',
  ),
  ['pool gate between the limits', { ...gate, egressHardwareHeightIn: 48.0625 }, 'yes', at('b')],
  ['pool gate at its limit', { ...gate, egressHardwareHeightIn: 54 }, 'yes', at('b')],
  ['pool gate over its limit is clause a', { ...gate, egressHardwareHeightIn: 54.0625 }, 'no', at('b')],
  ['pool gate at ordinary height', { ...gate, egressHardwareHeightIn: 48 }, 'no', at('b')],
  ['other gate', { ...gate, poolBarrierGate: false, egressHardwareHeightIn: 50 }, 'no', at('b')],
  [
    'pool gate that nobody leaves by',
    { ...gate, egressRole: 'sealedOff', egressHardwareHeightIn: 50 },
    'no',
    at('b'),
  ],
  ['height not measured', gate, 'unknown', at('b')],
  ...onEach(
    [
      'gateLock/secure/free',
      'exitTrim/safe/stairReentry',
      'magnet/safe/doorSwitch',
      'delayedExitDevice/safe/delayed',
    ],
    'pool gate between the limits',
    { ...gate, egressHardwareHeightIn: 50 },
    'yes',
    'b',
  ),
  [
    'sensor at a pool gate',
    { ...gate, egressHardwareHeightIn: 50 },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
);
