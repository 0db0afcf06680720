import { text } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ['no side outdoors', { egressRole: 'exteriorExit', exterior: false }, 'yes', { does: 'warn exterior' }],
    ['no side outdoors', { egressRole: 'dischargeGate', exterior: false }, 'yes'],
    ['no side outdoors', { egressRole: 'egressCourt', exterior: false }, 'yes'],
    ['no side outdoors', { egressRole: 'roofDoor', exterior: false }, 'yes'],
    ['no side outdoors', { egressRole: 'exteriorSpace', exterior: false }, 'yes'],
    ['outdoors', { egressRole: 'exteriorExit', exterior: true }, 'no'],
    ['room door', { egressRole: 'exitAccess', exterior: false }, 'no'],
    ['place not known', { egressRole: 'exteriorExit' }, 'unknown'],
  ),
});
