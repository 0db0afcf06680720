import { text } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T29 = defineRule({
  id: 'T-29',
  title: 'Door contact on the inactive leaf',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A pair watched on one leaf only can be opened by the other without anybody knowing.',
  clauses: [
    {
      effect: 'require',
      items: ['doorPositionInactive'],
      when: all(yes('isPair'), yes('wantsReader')),
      says: 'Both leaves of a controlled pair get a position switch.',
    },
  ],
});
