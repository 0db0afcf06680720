import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B21 = defineRule({
  id: 'B-21',
  title: 'A strike cutout at a frameless glass leaf',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A frameless leaf meets wall, floor or glass, where there is no place for a strike pocket.',
  clauses: [
    {
      effect: 'finding',
      field: 'strikePrep',
      severity: 'warn',
      when: all(
        is('leafMaterial', 'glassFrameless'),
        is('strikePrep', 'ansi478', 'light234', 'residential', 'aluminium458'),
      ),
      says: 'The leaf is frameless glass, yet a strike preparation of {strikePrep} is entered; look at leaf and jamb again.',
    },
  ],
});
