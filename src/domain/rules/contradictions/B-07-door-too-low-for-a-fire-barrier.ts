import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      '1 h wall, door 44',
      { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 44 },
      'yes',
      { does: 'refuse fireRatingMin' },
    ],
    ['1 h wall, door 45', { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
    ['wall below 1 h', { wallKind: 'fireBarrier', wallRatingMin: 59, fireRatingMin: 20 }, 'no'],
    ['wall over 1 h, door 60', { wallKind: 'fireBarrier', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
    ['1 h wall, door 60', { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
    ['2 h wall, door 89', { wallKind: 'fireBarrier', wallRatingMin: 120, fireRatingMin: 89 }, 'yes'],
    ['2 h wall, door 90', { wallKind: 'fireBarrier', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
    ['wall over 2 h, door 90', { wallKind: 'fireBarrier', wallRatingMin: 121, fireRatingMin: 90 }, 'yes'],
    ['3 h wall, door 179', { wallKind: 'fireBarrier', wallRatingMin: 180, fireRatingMin: 179 }, 'yes'],
    ['3 h wall, door 180', { wallKind: 'fireBarrier', wallRatingMin: 180, fireRatingMin: 180 }, 'no'],
    ['corridor', { wallKind: 'corridor', wallRatingMin: 60, fireRatingMin: 20 }, 'no'],
    ['wall not known', { wallKind: 'fireBarrier', fireRatingMin: 45 }, 'unknown'],
  ),
});
