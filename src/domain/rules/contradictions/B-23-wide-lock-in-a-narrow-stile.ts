import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B23 = defineRule({
  id: 'B-23',
  title: 'A bored or mortise lock in a narrow stile',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A narrow stile is about 2 in wide and has no room for these locks.',
  clauses: [
    {
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: all(
        is('leafMaterial', 'aluminiumNarrow'),
        is('latch', 'bored', 'mortise', 'mortiseDeadbolt', 'boredPlusDeadbolt'),
      ),
      says: 'A narrow stile cannot take the latch entered, {latch}; measure the stile or look at the lock again.',
    },
  ],
  cases: cases(
    [
      'no room in the stile',
      { leafMaterial: 'aluminiumNarrow', latch: 'bored' },
      'yes',
      { does: 'warn latch' },
    ],
    ['no room in the stile', { leafMaterial: 'aluminiumNarrow', latch: 'mortise' }, 'yes'],
    ['no room in the stile', { leafMaterial: 'aluminiumNarrow', latch: 'mortiseDeadbolt' }, 'yes'],
    ['no room in the stile', { leafMaterial: 'aluminiumNarrow', latch: 'boredPlusDeadbolt' }, 'yes'],
    ['narrow-stile deadlatch', { leafMaterial: 'aluminiumNarrow', latch: 'deadlatch' }, 'no'],
    ['wide stile', { leafMaterial: 'aluminiumWide', latch: 'mortise' }, 'no'],
    ['latch not seen', { leafMaterial: 'aluminiumNarrow' }, 'unknown'],
  ),
});
