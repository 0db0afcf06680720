import { text } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B73 = defineRule({
  id: 'B-73',
  title: 'An operator where there is no power',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'An operator needs power.',
  clauses: [
    {
      effect: 'finding',
      field: 'powerAtDoor',
      severity: 'warn',
      when: all(no('powerAtDoor'), no('cablePath'), is('operator', 'lowEnergy', 'fullPower', 'powerAssist')),
      says: 'An automatic operator is entered, and neither power nor a cable path; the operator is powered from somewhere, so look again.',
    },
  ],
});
