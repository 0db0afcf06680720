import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
