import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
