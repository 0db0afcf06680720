import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const pair = { ...rated, doorType: 'doubleEgressPair' } as const;

const hospital = { ...pair, wallKind: 'smokeBarrier', occupancyGroup: 'I-2' } as const;

export const R50Cases = cases(
  ['rated double-egress pair', pair, 'yes', { clause: 'a', does: ['doubleEgressListing'] }],
  ['unrated double-egress pair', { ...pair, ...unrated }, 'no', { clause: 'a' }],
  ['ordinary rated pair', { ...rated, doorType: 'pair' }, 'no', { clause: 'a' }],
  ['door type not known', rated, 'unknown', { clause: 'a' }],
  ['hospital smoke barrier', hospital, 'yes', { clause: 'b', does: 'signOff must' }],
  ['assisted living, condition 2', { ...hospital, occupancyGroup: 'I-1.2' }, 'yes', { clause: 'b' }],
  ['office smoke barrier', { ...hospital, occupancyGroup: 'B' }, 'no', { clause: 'b' }],
  ['hospital corridor wall', { ...hospital, wallKind: 'corridor' }, 'no', { clause: 'b' }],
  ['hospital, ordinary pair', { ...hospital, doorType: 'pair' }, 'no', { clause: 'b' }],
  ['hospital, no rating at all', { ...hospital, ...unrated }, 'no', { clause: 'b' }],
  ['group not known', { ...pair, wallKind: 'smokeBarrier' }, 'unknown', { clause: 'b' }],
);
