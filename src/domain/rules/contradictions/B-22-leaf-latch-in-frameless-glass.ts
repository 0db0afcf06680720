import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B22 = defineRule({
  id: 'B-22',
  title: 'A lock for a solid leaf in frameless glass',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A bored or mortise lock needs a stile, and frameless glass has none, so it is not clear how people leave.',
  clauses: [
    {
      effect: 'finding',
      field: 'latch',
      severity: 'refuse',
      when: all(
        is('leafMaterial', 'glassFrameless'),
        is(
          'latch',
          'bored',
          'mortise',
          'mortiseDeadbolt',
          'boredPlusDeadbolt',
          'deadlatch',
          'rimExit',
          'rimPlusRods',
        ),
      ),
      says: 'The leaf is frameless glass and the latch entered is {latch}, which needs a stile or a solid leaf; look at both again.',
    },
  ],
});
