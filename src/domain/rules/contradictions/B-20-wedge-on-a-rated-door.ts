import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B20 = defineRule({
  id: 'B-20',
  title: 'A wedge on a rated door',
  family: 'contradictions',
  book: 'nfpa80',
  cites: [text('nfpa80', '', 'Fire doors are not blocked open'), under('smokeActivatedClosing')],
  confidence: 'secondary',
  why: 'A wedged fire door is an open hole in the wall.',
  clauses: [
    {
      effect: 'finding',
      field: 'holdOpen',
      severity: 'warn',
      when: all(yes('fireRated'), is('holdOpen', 'wedge')),
      says: 'A wedge, kick-down or friction arm holds this fire door open; remove it today, or check that the door is rated.',
    },
  ],
});
