import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B14 = defineRule({
  id: 'B-14',
  title: 'Door rated below what its exterior wall may require',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('openingProtectives')],
  confidence: 'memory',
  note: 'An exterior wall rated for reasons other than a nearby lot line may have unprotected openings, so this is only a question.',
  why: 'Where another building or lot line is near, an opening in the exterior wall is protected too.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: all(
        is('wallKind', 'exterior'),
        any(
          all(atLeast('wallRatingMin', 60), below('fireRatingMin', 'doorMinInBarrier1h')),
          all(over('wallRatingMin', 60), below('fireRatingMin', 'doorMinInWall2h')),
        ),
      ),
      says: 'The exterior wall has {wallRatingMin} and the door {fireRatingMin}; ask whether a nearby lot line requires 45 min at 1 h and 90 above, or whether the opening may be unprotected.',
    },
  ],
});
