import { text, under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B52 = defineRule({
  id: 'B-52',
  title: 'A clinical need outside a place of care',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('controlledEgress')],
  confidence: 'project',
  why: 'Patients who must be contained live and are treated in institutional groups.',
  clauses: [
    {
      effect: 'finding',
      field: 'occupancyGroup',
      severity: 'refuse',
      when: all(
        is('clinicalNeed', 'containment', 'securityThreat', 'protection'),
        not(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2', 'I-3', 'R-4')),
      ),
      says: 'A clinical need to keep people in is recorded in {occupancyGroup}; check the group of the space and the need.',
    },
  ],
});
