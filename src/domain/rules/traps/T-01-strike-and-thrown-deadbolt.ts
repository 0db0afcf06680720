import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T01 = defineRule({
  id: 'T-01',
  title: 'A strike never unlocks a thrown deadbolt',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'The keeper of a strike lets a latch pass; a thrown bolt stays where it is.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('latch', 'deadboltOnly', 'hookbolt'),
      of: { family: ['strike'] },
      says: 'There is only a bolt here, and a strike frees nothing but a latch.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: is('latch', 'mortiseDeadbolt'),
      of: { device: ['strikeMortise'] },
      says: 'Use a strike made for latch and bolt, or take the deadbolt out of use: a plain strike cannot free a thrown bolt.',
    },
  ],
});
