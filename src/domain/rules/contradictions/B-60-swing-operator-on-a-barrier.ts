import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B60 = defineRule({
  id: 'B-60',
  title: 'A swing operator on a revolving door or turnstile',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  note: 'Revolving doors driven at full power exist and are left out.',
  why: 'Low-energy and power-assist operators move a swinging leaf.',
  clauses: [
    {
      effect: 'finding',
      field: 'operator',
      severity: 'warn',
      when: all(
        is('doorType', 'revolving', 'turnstile', 'turnstileFull', 'turnstileSecurity', 'grille'),
        is('operator', 'lowEnergy', 'powerAssist'),
      ),
      says: 'An operator for a swinging leaf is entered on a door of this type, {doorType}; check the door type, or put the operator on the door beside it.',
    },
  ],
});
