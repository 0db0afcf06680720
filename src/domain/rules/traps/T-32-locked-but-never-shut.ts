import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T32 = defineRule({
  id: 'T-32',
  title: 'Locked but never shut',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A lock secures nothing on a leaf that does not close by itself.',
  clauses: [
    {
      effect: 'require',
      items: ['closer'],
      when: all(yes('isSwinging'), is('closing', 'none'), yes('wantsReader')),
      says: 'A controlled door gets a closer that latches it every time.',
    },
  ],
  cases: cases(
    [
      'controlled leaf without closer',
      { doorType: 'single', closing: 'none', readerSides: 'secure' },
      'yes',
      { does: ['closer'] },
    ],
    ['closer there', { doorType: 'single', closing: 'selfClosing', readerSides: 'secure' }, 'no'],
    ['no reader', { doorType: 'single', closing: 'none', readerSides: 'none' }, 'no'],
    ['sliding leaf', { doorType: 'slidingManual', closing: 'none', readerSides: 'secure' }, 'no'],
    ['closing not surveyed', { doorType: 'single', readerSides: 'secure' }, 'unknown'],
  ),
});
