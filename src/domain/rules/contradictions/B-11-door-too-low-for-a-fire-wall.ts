import { under } from '../../codes/sections.ts';
import { all, any, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B11 = defineRule({
  id: 'B-11',
  title: 'Door rated below what its fire wall requires',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('openingProtectives')],
  confidence: 'secondary',
  note: 'Leaves of double fire walls have a row of their own with 60 min at 1 h.',
  why: 'A fire wall divides one building into two, and its door is the only opening.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(
        is('wallKind', 'fireWall'),
        any(
          all(over('wallRatingMin', 60), below('fireRatingMin', 'doorMinInWall2h')),
          all(over('wallRatingMin', 120), below('fireRatingMin', 'doorMinInWall4h')),
        ),
      ),
      says: 'A fire wall of {wallRatingMin} takes a door of 90 min up to 2 h and 180 above; the door has {fireRatingMin}. Check both figures, or state that there are two doors in the wall.',
    },
  ],
});
