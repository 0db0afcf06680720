import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const pair = { ...rated, doorType: 'pair', inactiveBolts: 'constantLatching' } as const;

export const R46Cases = cases(
  [
    'rated pair, constant-latching bolts',
    pair,
    'yes',
    { clause: 'a', on: 'mortiseLock/secure/free', does: ['automaticFlushBolts'] },
  ],
  [
    'rated pair, nothing on the inactive leaf',
    { ...pair, inactiveBolts: 'none' },
    'yes',
    { clause: 'a', on: 'strikeMortise/secure/free' },
  ],
  [
    'rated pair, hand bolts are another rule',
    { ...pair, inactiveBolts: 'manualFlush' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  [
    'rated pair, rods',
    { ...pair, inactiveBolts: 'rods' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  [
    'rated pair, rim device on a mullion',
    { ...pair, inactiveBolts: 'rim' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ['unrated pair', { ...pair, ...unrated }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  ['single leaf', { ...pair, doorType: 'single' }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'bolts not surveyed',
    { ...rated, doorType: 'pair' },
    'unknown',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ['exit devices latch each leaf', pair, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  [
    'automatic bolts always need it',
    { ...pair, inactiveBolts: 'automaticFlush', activeCouldCloseFirst: false },
    'yes',
    { clause: 'b', on: 'mortiseLock/secure/free', does: ['coordinator'] },
  ],
  [
    'constant-latching bolts, active leaf could be first',
    { ...pair, activeCouldCloseFirst: true },
    'yes',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'constant-latching bolts, any order works',
    { ...pair, activeCouldCloseFirst: false },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'rods, any order works',
    { ...pair, inactiveBolts: 'rods', activeCouldCloseFirst: true },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'rim device on a mullion',
    { ...pair, inactiveBolts: 'rim', activeCouldCloseFirst: true },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'unrated pair',
    { ...pair, ...unrated, inactiveBolts: 'automaticFlush' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'double-egress pair swings two ways',
    { ...pair, doorType: 'doubleEgressPair', inactiveBolts: 'automaticFlush' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  ['closing order not known', pair, 'unknown', { clause: 'b', on: 'mortiseLock/secure/free' }],
  [
    'exit devices latch each leaf',
    { ...pair, inactiveBolts: 'automaticFlush' },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
);
