import { text, under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'clinical need in an office',
      { clinicalNeed: 'containment', occupancyGroup: 'B' },
      'yes',
      { does: 'refuse occupancyGroup' },
    ],
    ['clinical need in an office', { clinicalNeed: 'securityThreat', occupancyGroup: 'B' }, 'yes'],
    ['clinical need in an office', { clinicalNeed: 'protection', occupancyGroup: 'B' }, 'yes'],
    ['place of care', { clinicalNeed: 'containment', occupancyGroup: 'I-1.1' }, 'no'],
    ['place of care', { clinicalNeed: 'containment', occupancyGroup: 'I-1.2' }, 'no'],
    ['place of care', { clinicalNeed: 'containment', occupancyGroup: 'I-2' }, 'no'],
    ['place of care', { clinicalNeed: 'containment', occupancyGroup: 'I-3' }, 'no'],
    ['place of care', { clinicalNeed: 'containment', occupancyGroup: 'R-4' }, 'no'],
    ['no need', { clinicalNeed: 'none', occupancyGroup: 'B' }, 'no'],
    ['group not known', { clinicalNeed: 'containment' }, 'unknown'],
  ),
});
