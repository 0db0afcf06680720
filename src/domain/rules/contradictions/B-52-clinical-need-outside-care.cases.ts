import { cases } from '../rule.ts';

export const B52Cases = cases(
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
);
