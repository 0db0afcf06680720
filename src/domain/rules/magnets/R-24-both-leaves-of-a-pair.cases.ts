import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { oneOfEachMagnet } from './given.ts';

const pair = { doorType: 'pair', inactiveBolts: 'manualFlush' } as const;

const on = 'magnet/safe/sensor';

const rest = ['boltMotor/safe/sensor', 'mortiseLock/secure/free'];

export const R24Cases = cases(
  ...onEach(oneOfEachMagnet, 'pair', pair, 'yes', 'a'),
  [
    'double-egress pair',
    { doorType: 'doubleEgressPair' },
    'yes',
    { clause: 'a', on, does: ['doubleMagnet'] },
  ],
  ['single leaf', { doorType: 'single' }, 'no', { clause: 'a', on }],
  ['type not known', {}, 'unknown', { clause: 'a', on }],
  ...onEach(rest, 'no magnet', pair, 'no', 'a'),
  ...onEach(oneOfEachMagnet, 'pair with hand bolts', pair, 'yes', { clause: 'b', does: 'caution' }),
  ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush' }, 'no', { clause: 'b', on }],
  ['single leaf', { ...pair, doorType: 'single' }, 'no', { clause: 'b', on }],
  ['bolts not known', { doorType: 'pair' }, 'unknown', { clause: 'b', on }],
  ...onEach(rest, 'no magnet', pair, 'no', 'b'),
);
