import { text } from '../../codes/sections.ts';
import { all, is, isKnown, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const seen = all(isKnown('fireLabel'), is('fireLabel', 'seen'));

export const B06 = defineRule({
  id: 'B-06',
  title: 'A fire-rated glazed assembly with no listing seen',
  family: 'contradictions',
  book: 'nfpa80',
  cites: [text('nfpa80', '', 'Labeled assemblies'), text('practice', '', 'Listed as one system')],
  confidence: 'practice',
  why: 'Leaf, frame, glass and hardware of such an assembly are listed together, so nothing about it can be assumed.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireLabel',
      severity: 'refuse',
      when: all(is('leafMaterial', 'glazedFireAssembly'), not(seen)),
      says: 'This is entered as a fire-resistive glazed assembly, and no label or listing was seen; ask for the listing before any hardware is named.',
    },
  ],
});
