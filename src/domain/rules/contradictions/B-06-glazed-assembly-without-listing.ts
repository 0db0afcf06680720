import { text } from '../../codes/sections.ts';
import { all, is, isKnown, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const seen = all(isKnown('labelSeen'), yes('labelSeen'));

export const B06 = defineRule({
  id: 'B-06',
  title: 'A glazed fire assembly nobody saw a listing for',
  family: 'contradictions',
  book: 'nfpa80',
  cites: [text('nfpa80', '', 'Labelled assemblies'), text('practice', '', 'Listed as one system')],
  confidence: 'practice',
  why: 'Leaf, frame, glass and hardware of such an assembly are listed together, so nothing about it can be guessed.',
  clauses: [
    {
      effect: 'finding',
      field: 'labelSeen',
      severity: 'refuse',
      when: all(is('leafMaterial', 'glazedFireAssembly'), not(seen)),
      says: 'This is entered as a fire-resistive glazed assembly, and no label or listing was seen; ask for the listing before any hardware is named.',
    },
  ],
  cases: cases(
    [
      'label not seen',
      { leafMaterial: 'glazedFireAssembly', labelSeen: false },
      'yes',
      { does: 'refuse labelSeen' },
    ],
    ['label not asked', { leafMaterial: 'glazedFireAssembly' }, 'yes'],
    ['label seen', { leafMaterial: 'glazedFireAssembly', labelSeen: true }, 'no'],
    ['hollow metal', { leafMaterial: 'hollowMetal', labelSeen: false }, 'no'],
    ['leaf not known', { labelSeen: false }, 'unknown'],
  ),
});
