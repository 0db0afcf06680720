import { text } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'controlled pair',
      { doorType: 'pair', readerSides: 'secure' },
      'yes',
      { does: ['doorPositionInactive'] },
    ],
    ['single leaf', { doorType: 'single', readerSides: 'secure' }, 'no'],
    ['pair without reader', { doorType: 'pair', readerSides: 'none' }, 'no'],
    ['reader not settled', { doorType: 'pair' }, 'unknown'],
  ),
});
