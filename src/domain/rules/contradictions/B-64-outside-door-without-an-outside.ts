import { text } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B64 = defineRule({
  id: 'B-64',
  title: 'An exterior door with no exterior side',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Egress role and location are separate facts, and here they disagree.',
  clauses: [
    {
      effect: 'finding',
      field: 'exterior',
      severity: 'warn',
      when: all(
        is('egressRole', 'exteriorExit', 'dischargeGate', 'egressCourt', 'roofDoor', 'exteriorSpace'),
        no('exterior'),
      ),
      says: 'By its role, {egressRole}, the door is exterior, yet no side of it is outdoors; check both.',
    },
  ],
});
