import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R52 = defineRule({
  id: 'R-52',
  title: 'A smoke door keeps its gasketing',
  family: 'fire',
  book: 'ul',
  cites: [text('ul', 'UL 1784', 'Air leakage of door assemblies')],
  confidence: 'memory',
  why: 'Leakage was measured with the hardware in place; a lip or an armature that breaks the gasket changes the result.',
  clauses: [
    {
      effect: 'caution',
      when: yes('smokeSeals'),
      of: { family: ['strike', 'magnet', 'delayed'], keepsLatch: false },
      says: 'Strike lip or magnet plate can interrupt the gasket of this smoke door: choose a kit for gasketed frames, or the smoke label may be voided.',
    },
  ],
});
