import { text, under } from '../../codes/sections.ts';
import { all, any, atLeast, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
