import { text, under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const manual = all(yes('fireRated'), yes('isPair'), is('inactiveBolts', 'manualFlush'));
/** Rooms where people are not normally; panic hardware and elevator rooms have their own rules. */
const seldomUsed = is('roomUse', 'storage', 'equipment', 'electricalRoom');
const pair = { ...rated, doorType: 'pair', inactiveBolts: 'manualFlush' } as const;

export const R45 = defineRule({
  id: 'R-45',
  title: 'No manual bolts on a rated pair',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4.5.1', 'Flush bolts of pairs'), under('boltLocks')],
  confidence: 'read',
  note: 'Which rooms count as not normally occupied is this schedule’s reading: storage, equipment and electrical rooms.',
  why: 'A leaf whose bolts someone forgot to throw is not latched, and the lock of the active leaf then holds nothing.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'inactiveBolts',
      severity: 'warn',
      when: all(manual, not(seldomUsed)),
      says: 'The inactive leaf of this fire-rated pair is held by manual bolts, which are not accepted here.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(manual, not(seldomUsed)),
      items: ['automaticFlushBolts'],
      says: 'Automatic or constant-latching bolts replace the manual ones.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(manual, seldomUsed),
      says: 'Labeled manual bolts may stay at this seldom-used room only if the authority accepts them.',
    },
  ],
  cases: cases(
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
    [
      'automatic bolts',
      { ...pair, inactiveBolts: 'automaticFlush', roomUse: 'office' },
      'no',
      { clause: 'a' },
    ],
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
    [
      'automatic bolts',
      { ...pair, inactiveBolts: 'automaticFlush', roomUse: 'office' },
      'no',
      { clause: 'b' },
    ],
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
  ),
});
