import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R122 = defineRule({
  id: 'R-122',
  title: 'The lock releases before the operator opens',
  family: 'alarm',
  book: 'practice',
  cites: [
    text('practice', '', 'Sequence of operator and lock'),
    text('nfpa80', '6.4.1', 'Closing devices'),
    under('powerDoors'),
  ],
  confidence: 'secondary',
  note: 'Bolts and latch retraction are counted with strikes and magnets: the same sequence holds.',
  why: 'An operator that drives against a lock bends it, burns out and leaves the door stuck.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: is('operator', 'lowEnergy', 'fullPower'),
      of: { keepsLatch: false },
      items: ['operatorSequence'],
      says: 'The latch or lock releases first, and only then does the operator open; the sequence is the same from both sides.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('operator', 'lowEnergy', 'fullPower'), yes('fireAlarm'), yes('fireRated')),
      of: { keepsLatch: false },
      says: 'On fire alarm the operator on this fire door is disabled; lock and latch then follow their own rules, so test them together.',
    },
  ],
});
