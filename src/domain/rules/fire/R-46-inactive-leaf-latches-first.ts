import { text, under } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const ratedPair = all(yes('fireRated'), is('doorType', 'pair'));

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
});
