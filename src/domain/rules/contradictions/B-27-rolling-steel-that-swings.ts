import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B27 = defineRule({
  id: 'B-27',
  title: 'Rolling steel that swings',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A curtain that rolls up is not a leaf, and people cannot leave by it the same way.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafMaterial',
      severity: 'refuse',
      when: all(is('leafMaterial', 'rollingSteel'), yes('isSwinging')),
      says: 'The leaf is entered as rolling steel and the door as swinging; only one can be right, and egress depends on it.',
    },
  ],
});
