import { text, under } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const ratedPair = all(yes('fireRated'), is('doorType', 'pair'));
const pair = { ...rated, doorType: 'pair', inactiveBolts: 'constantLatching' } as const;

export const R46 = defineRule({
  id: 'R-46',
  title: 'On a rated pair the inactive leaf latches by itself, and first',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4.5', 'Flush bolts of pairs'), under('fireDoorLatching')],
  confidence: 'secondary',
  note: 'Manual bolts are judged by R-45; leaves held by rods or rim devices latch by themselves.',
  why: 'The lock on the active leaf holds only if the inactive leaf is already latched.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(ratedPair, not(is('inactiveBolts', 'rods', 'rim', 'manualFlush'))),
      of: { exitDevice: false },
      items: ['automaticFlushBolts'],
      says: 'The inactive leaf is held by automatic or constant-latching bolts, labeled for this pair.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(
        ratedPair,
        not(is('inactiveBolts', 'rods', 'rim')),
        any(is('inactiveBolts', 'automaticFlush'), yes('activeCouldCloseFirst')),
      ),
      of: { exitDevice: false },
      items: ['coordinator'],
      says: 'A coordinator holds the active leaf open until the inactive leaf has closed.',
    },
  ],
  cases: cases(
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
  ),
});
