import { text } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'operator without power',
      { powerAtDoor: false, cablePath: false, operator: 'lowEnergy' },
      'yes',
      { does: 'warn powerAtDoor' },
    ],
    ['operator without power', { powerAtDoor: false, cablePath: false, operator: 'fullPower' }, 'yes'],
    ['operator without power', { powerAtDoor: false, cablePath: false, operator: 'powerAssist' }, 'yes'],
    ['power there', { powerAtDoor: true, cablePath: false, operator: 'fullPower' }, 'no'],
    ['path there', { powerAtDoor: false, cablePath: true, operator: 'fullPower' }, 'no'],
    ['no operator', { powerAtDoor: false, cablePath: false, operator: 'none' }, 'no'],
    ['operator not surveyed', { powerAtDoor: false, cablePath: false }, 'unknown'],
  ),
});
