import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      '1 h wall, door 44',
      { wallKind: 'exterior', wallRatingMin: 60, fireRatingMin: 44 },
      'yes',
      { does: 'warn fireRatingMin' },
    ],
    ['1 h wall, door 45', { wallKind: 'exterior', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
    ['wall below 1 h', { wallKind: 'exterior', wallRatingMin: 59, fireRatingMin: 0 }, 'no'],
    ['wall over 1 h, door 60', { wallKind: 'exterior', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
    ['1 h wall, door 60', { wallKind: 'exterior', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
    ['2 h wall, door 89', { wallKind: 'exterior', wallRatingMin: 120, fireRatingMin: 89 }, 'yes'],
    ['2 h wall, door 90', { wallKind: 'exterior', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
    ['corridor', { wallKind: 'corridor', wallRatingMin: 120, fireRatingMin: 20 }, 'no'],
    ['wall not known', { wallKind: 'exterior', fireRatingMin: 0 }, 'unknown'],
  ),
});
