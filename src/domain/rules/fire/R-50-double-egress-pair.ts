import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const ratedDoubleEgress = all(yes('fireRated'), is('doorType', 'doubleEgressPair'));

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
});
