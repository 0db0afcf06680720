import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const short = any(
  all(atLeast('wallRatingMin', 60), below('fireRatingMin', 'doorMinInBarrier1h')),
  all(over('wallRatingMin', 60), below('fireRatingMin', 'doorMinInWall2h')),
  all(over('wallRatingMin', 120), below('fireRatingMin', 'doorMinInWall4h')),
);

export const B07 = defineRule({
  id: 'B-07',
  title: 'Door rated below what its fire barrier requires',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('openingProtectives')],
  confidence: 'secondary',
  why: 'The code’s table gives the door rating for each wall; a lower-rated door makes the wall no better than the door.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(is('wallKind', 'fireBarrier'), short),
      says: 'A fire barrier of {wallRatingMin} takes a door of 45 min at 1 h, 90 at 2 h and 180 above; the door has {fireRatingMin}. Check both figures.',
    },
  ],
});
