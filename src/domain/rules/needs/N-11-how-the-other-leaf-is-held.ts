import { text } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N11 = defineRule({
  id: 'N-11',
  title: 'A lock on one leaf depends on how the other is held',
  family: 'needs',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'The lock of one leaf engages the other: where that one swings free, nothing is locked and nothing latches.',
  clauses: [
    {
      effect: 'prohibit',
      // Rods on each leaf hold both by themselves.
      when: all(yes('isPair'), is('inactiveBolts', 'none'), not(is('latch', 'verticalRods', 'rimPlusRods'))),
      of: { family: ['strike', 'lock', 'battery', 'mechanical', 'bolt'] },
      says: 'Nothing holds the other leaf, so a lock on this one secures nothing and latches into nothing; add bolts or rods first.',
    },
  ],
});
