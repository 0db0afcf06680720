import { text, under } from '../../codes/sections.ts';
import { all, any, atLeast, under as below } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const lower = any(
  all(atLeast('fireRatingMin', 20), below('frameLabelMin', 20)),
  all(atLeast('fireRatingMin', 45), below('frameLabelMin', 45)),
  all(atLeast('fireRatingMin', 60), below('frameLabelMin', 60)),
  all(atLeast('fireRatingMin', 90), below('frameLabelMin', 90)),
  all(atLeast('fireRatingMin', 180), below('frameLabelMin', 180)),
);

export const B05 = defineRule({
  id: 'B-05',
  title: 'The frame’s label is lower than the door needs',
  family: 'contradictions',
  book: 'nfpa80',
  cites: [text('nfpa80', '', 'Frames are labeled as the doors they hold'), under('openingProtectives')],
  confidence: 'practice',
  why: 'Leaf and frame hold back fire together, and the weaker label counts.',
  clauses: [
    {
      effect: 'finding',
      field: 'frameLabelMin',
      severity: 'refuse',
      when: lower,
      says: 'The frame is labeled {frameLabelMin} and the door must have {fireRatingMin}; look at both labels again, or plan a new frame.',
    },
  ],
  cases: cases(
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
  ),
});
