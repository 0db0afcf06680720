import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const ratedDoubleEgress = all(yes('fireRated'), is('doorType', 'doubleEgressPair'));
const pair = { ...rated, doorType: 'doubleEgressPair' } as const;
const hospital = { ...pair, wallKind: 'smokeBarrier', occupancyGroup: 'I-2' } as const;

export const R50 = defineRule({
  id: 'R-50',
  title: 'A double-egress pair is listed as a whole',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.3', 'Listed frames and doors'), under('smokeBarrierDoors')],
  confidence: 'secondary',
  note: 'Whether the health-care smoke-barrier pair must latch changed between editions; ambulatory care counts with it but is not a group of its own.',
  why: 'Two leaves that swing in opposite directions have no common stop, so frame, leaves and latches work only as tested together.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: ratedDoubleEgress,
      items: ['doubleEgressListing'],
      says: 'Frame and leaves are listed together for double egress, and each leaf latches by itself.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(ratedDoubleEgress, is('wallKind', 'smokeBarrier'), is('occupancyGroup', 'I-1.2', 'I-2')),
      says: 'In a health-care smoke barrier this pair may be excused from being a latching fire door; a reviewer decides which edition’s rule applies.',
    },
  ],
  cases: cases(
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
  ),
});
