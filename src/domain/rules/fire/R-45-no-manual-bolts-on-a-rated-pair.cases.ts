import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const pair = { ...rated, doorType: 'pair', inactiveBolts: 'manualFlush' } as const;

export const R45Cases = cases(
  [
    'rated office pair, hand bolts',
    { ...pair, roomUse: 'office' },
    'yes',
    { clause: 'a', does: 'warn inactiveBolts' },
  ],
  [
    'rated double-egress pair, hand bolts',
    { ...pair, doorType: 'doubleEgressPair', roomUse: 'office' },
    'yes',
    { clause: 'a' },
  ],
  ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush', roomUse: 'office' }, 'no', { clause: 'a' }],
  ['unrated pair', { ...pair, ...unrated, roomUse: 'office' }, 'no', { clause: 'a' }],
  ['single leaf', { ...pair, doorType: 'single', roomUse: 'office' }, 'no', { clause: 'a' }],
  ['storage room', { ...pair, roomUse: 'storage' }, 'no', { clause: 'a' }],
  ['equipment room', { ...pair, roomUse: 'equipment' }, 'no', { clause: 'a' }],
  ['electrical room', { ...pair, roomUse: 'electricalRoom' }, 'no', { clause: 'a' }],
  ['room not known', pair, 'unknown', { clause: 'a' }],
  [
    'rated office pair, hand bolts',
    { ...pair, roomUse: 'office' },
    'yes',
    { clause: 'b', does: ['automaticFlushBolts'] },
  ],
  ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush', roomUse: 'office' }, 'no', { clause: 'b' }],
  ['unrated pair', { ...pair, ...unrated, roomUse: 'office' }, 'no', { clause: 'b' }],
  ['single leaf', { ...pair, doorType: 'single', roomUse: 'office' }, 'no', { clause: 'b' }],
  ['storage room', { ...pair, roomUse: 'storage' }, 'no', { clause: 'b' }],
  ['equipment room', { ...pair, roomUse: 'equipment' }, 'no', { clause: 'b' }],
  ['electrical room', { ...pair, roomUse: 'electricalRoom' }, 'no', { clause: 'b' }],
  ['bolts not surveyed', { ...rated, doorType: 'pair', roomUse: 'office' }, 'unknown', { clause: 'b' }],
  ['storage room', { ...pair, roomUse: 'storage' }, 'yes', { clause: 'c', does: 'signOff must' }],
  ['equipment room', { ...pair, roomUse: 'equipment' }, 'yes', { clause: 'c' }],
  ['electrical room', { ...pair, roomUse: 'electricalRoom' }, 'yes', { clause: 'c' }],
  ['office', { ...pair, roomUse: 'office' }, 'no', { clause: 'c' }],
  [
    'storage room, automatic bolts',
    { ...pair, inactiveBolts: 'automaticFlush', roomUse: 'storage' },
    'no',
    { clause: 'c' },
  ],
  ['storage room, unrated pair', { ...pair, ...unrated, roomUse: 'storage' }, 'no', { clause: 'c' }],
  ['storage room, single leaf', { ...pair, doorType: 'single', roomUse: 'storage' }, 'no', { clause: 'c' }],
  ['room not known', pair, 'unknown', { clause: 'c' }],
);
