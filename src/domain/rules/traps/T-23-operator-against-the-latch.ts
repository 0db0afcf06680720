import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T23 = defineRule({
  id: 'T-23',
  title: 'Operator that fights the latch',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'An operator drives the leaf, so the latch must be out of the way before it starts; electrified trim leaves it out.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('operator', 'lowEnergy', 'fullPower'),
      of: { device: ['exitTrim'] },
      says: 'Electrified trim leaves the latch out and the operator pushes against it: use latch retraction or a strike.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('operator', 'powerAssist'),
      of: { device: ['exitTrim'] },
      says: 'Power assist helps only a person who has worked the lever first: check that everybody can.',
    },
  ],
});
