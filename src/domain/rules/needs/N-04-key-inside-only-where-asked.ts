import { text } from '../../codes/sections.ts';
import { no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N04 = defineRule({
  id: 'N-04',
  title: 'A lock keyed from inside only where requested',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A keyed exit is the last choice, never a default.',
  clauses: [
    {
      effect: 'prohibit',
      when: no('wishKeyLock'),
      of: { release: ['keyInside'] },
      says: 'A lock keyed from inside was not requested, and a keyed exit is never a default.',
    },
  ],
});
