import { cases } from '../rule.ts';

export const B05Cases = cases(
  [
    'frame one minute short',
    { fireRatingMin: 20, frameLabelMin: 19 },
    'yes',
    { does: 'refuse frameLabelMin' },
  ],
  ['frame one minute short', { fireRatingMin: 45, frameLabelMin: 44 }, 'yes'],
  ['frame one minute short', { fireRatingMin: 60, frameLabelMin: 59 }, 'yes'],
  ['frame one minute short', { fireRatingMin: 90, frameLabelMin: 89 }, 'yes'],
  ['frame one minute short', { fireRatingMin: 180, frameLabelMin: 179 }, 'yes'],
  ['frame as the door', { fireRatingMin: 20, frameLabelMin: 20 }, 'no'],
  ['frame as the door', { fireRatingMin: 45, frameLabelMin: 45 }, 'no'],
  ['frame as the door', { fireRatingMin: 60, frameLabelMin: 60 }, 'no'],
  ['frame as the door', { fireRatingMin: 90, frameLabelMin: 90 }, 'no'],
  ['frame as the door', { fireRatingMin: 180, frameLabelMin: 180 }, 'no'],
  ['a figure below 20 is asked elsewhere', { fireRatingMin: 19, frameLabelMin: 0 }, 'no'],
  ['a figure below 45 is asked elsewhere', { fireRatingMin: 44, frameLabelMin: 20 }, 'no'],
  ['a figure below 60 is asked elsewhere', { fireRatingMin: 59, frameLabelMin: 45 }, 'no'],
  ['a figure below 90 is asked elsewhere', { fireRatingMin: 89, frameLabelMin: 60 }, 'no'],
  ['a figure below 180 is asked elsewhere', { fireRatingMin: 179, frameLabelMin: 90 }, 'no'],
  ['better frame', { fireRatingMin: 20, frameLabelMin: 180 }, 'no'],
  ['frame without a label', { fireRatingMin: 45, frameLabelMin: 0 }, 'yes'],
  ['frame not read', { fireRatingMin: 90 }, 'unknown'],
);
