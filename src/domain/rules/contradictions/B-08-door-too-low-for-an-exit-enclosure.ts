import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const short = any(
  all(atLeast('wallRatingMin', 60), below('fireRatingMin', 'doorMinInEnclosure1h')),
  all(over('wallRatingMin', 60), below('fireRatingMin', 'doorMinInWall2h')),
  all(over('wallRatingMin', 120), below('fireRatingMin', 'doorMinInWall4h')),
);

export const B08 = defineRule({
  id: 'B-08',
  title: 'Door rated below what the stair or shaft requires',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('openingProtectives')],
  confidence: 'memory',
  why: 'The door into a stair or shaft must last as long as people need the stair.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(is('wallKind', 'exitEnclosure'), short),
      says: 'An exit stair, shaft or passageway of {wallRatingMin} takes a door of 60 min at 1 h and 90 at 2 h; the door has {fireRatingMin}. Check both figures.',
    },
  ],
});
