import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B17 = defineRule({
  id: 'B-17',
  title: 'A wood frame on a door rated above 90',
  family: 'contradictions',
  book: 'practice',
  cites: [text('practice', '', 'Labels commonly found by frame'), under('openingProtectives')],
  confidence: 'practice',
  why: 'Wood frames are not labeled for three hours.',
  clauses: [
    {
      effect: 'finding',
      field: 'frameMaterial',
      severity: 'refuse',
      when: all(is('frameMaterial', 'wood'), over('fireRatingMin', 90)),
      says: 'A wood frame was entered on a door rated {fireRatingMin}; check the frame and read its label.',
    },
  ],
});
