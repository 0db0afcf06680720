import { text, under } from '../../codes/sections.ts';
import { all, any, atLeast, atMost, not, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const standard = any(
  all(atLeast('fireRatingMin', 20), atMost('fireRatingMin', 20)),
  all(atLeast('fireRatingMin', 45), atMost('fireRatingMin', 45)),
  all(atLeast('fireRatingMin', 60), atMost('fireRatingMin', 60)),
  all(atLeast('fireRatingMin', 90), atMost('fireRatingMin', 90)),
  all(atLeast('fireRatingMin', 180), atMost('fireRatingMin', 180)),
);

export const B04 = defineRule({
  id: 'B-04',
  title: 'A rating that doors are not made in',
  family: 'contradictions',
  book: 'practice',
  cites: [text('practice', '', 'Door ratings are 20, 45, 60, 90 and 180 min'), under('openingProtectives')],
  confidence: 'practice',
  why: 'Doors are rated 20, 45, 60, 90 or 180 min, and a figure between them is often the wall’s or a misread label.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(over('fireRatingMin', 0), not(standard)),
      says: 'Doors are not rated {fireRatingMin}; a rating is never rounded, so read the label again or ask for the plan, and remember that the wall’s rating is a different figure.',
    },
  ],
});
