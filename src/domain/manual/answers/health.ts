import { type AnswersTo, plain, standard, trade } from './said.ts';

type Keys = 'clinicalNeed' | 'clinicalArea' | 'lockedUnitWatch' | 'suiteDoor';

export const healthAnswers: AnswersTo<Keys> = {
  clinicalNeed: {
    none: plain,
    containment: standard(
      'It is on record that these patients would come to harm if they left by themselves.',
    ),
    securityThreat: standard('It is on record that these patients endanger others.'),
    protection: standard(
      'It is on record that these patients must be kept safe from others or from running off: newborns, children, emergency care.',
    ),
  },
  clinicalArea: {
    none: plain,
    psychiatric: plain,
    cognitive: trade('Treatment of people with dementia and similar loss of memory.'),
    nurseryObstetric: trade('Newborn children and their mothers.'),
    pediatric: trade('Treatment of children.'),
    emergency: trade('Where patients arrive without an appointment and in need.'),
    other: plain,
  },
  lockedUnitWatch: {
    smokeDetection: standard('Smoke detectors in every part of the space whose doors are locked.'),
    attended: standard('Somebody is always there, inside the locked space, and can open every lock from it.'),
    neither: plain,
  },
  suiteDoor: {
    none: plain,
    perimeter: standard(
      'The door by which one enters, from the corridor, a group of care rooms that counts as one room.',
    ),
    inside: standard('Between rooms of one suite; corridor-door rules do not reach it.'),
  },
};
