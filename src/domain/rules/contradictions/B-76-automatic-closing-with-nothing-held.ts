import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B76 = defineRule({
  id: 'B-76',
  title: 'Automatic closing, with nothing that holds it open',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('smokeActivatedClosing')],
  confidence: 'project',
  why: 'Automatic closing means held open until smoke is detected.',
  clauses: [
    {
      effect: 'finding',
      field: 'holdOpen',
      severity: 'warn',
      when: all(is('closing', 'automaticClosing'), is('holdOpen', 'none')),
      says: 'The door is said to close on detection, and nothing holds it open; it may just be self-closing, so look again.',
    },
  ],
});
