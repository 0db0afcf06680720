import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const pair = { doorType: 'pair', latch: 'mortise', inactiveBolts: 'none' } as const;

const on = 'mortiseLock/secure/free';

export const N11Cases = cases(
  ...onEach(
    [
      'strikeMortise/secure/free',
      'mortiseLock/secure/free',
      'batteryLock/asIs/free',
      'mechanicalLock/none/free',
      'boltMotor/safe/sensor',
    ],
    'pair, other leaf loose',
    pair,
    'yes',
    { does: 'prohibit' },
  ),
  ...onEach(
    ['magnet/safe/sensor', 'exitTrim/secure/free', 'noLock/none/free'],
    'pair, other leaf loose, not meant',
    pair,
    'no',
  ),
  ['double-egress pair', { ...pair, doorType: 'doubleEgressPair' }, 'yes', { on }],
  ['hand bolts', { ...pair, inactiveBolts: 'manualFlush' }, 'no', { on }],
  ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush' }, 'no', { on }],
  ['rods on both leaves', { ...pair, latch: 'verticalRods' }, 'no', { on }],
  ['rods on the other leaf', { ...pair, latch: 'rimPlusRods' }, 'no', { on }],
  ['single leaf', { ...pair, doorType: 'single' }, 'no', { on }],
  ['not surveyed', { doorType: 'pair', latch: 'mortise' }, 'unknown', { on }],
);
