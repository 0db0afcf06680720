import { text } from '../../codes/sections.ts';
import { always, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F08 = defineRule({
  id: 'F-08',
  title: 'Wiring across the hinges',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A device in the leaf gets its power across the hinges and through the leaf.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['powerTransfer'],
      when: always,
      of: { transfer: true },
      says: 'A power transfer with enough conductors for the lock and its switches.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['leafRaceway'],
      when: no('leafRaceway'),
      of: { transfer: true },
      says: 'The leaf has no raceway from hinge to lock: core it, or replace it with one made that way.',
    },
  ],
});
