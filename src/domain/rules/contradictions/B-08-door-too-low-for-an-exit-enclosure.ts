import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      '1 h stair, door 59',
      { wallKind: 'exitEnclosure', wallRatingMin: 60, fireRatingMin: 59 },
      'yes',
      { does: 'refuse fireRatingMin' },
    ],
    ['1 h stair, door 60', { wallKind: 'exitEnclosure', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
    ['wall below 1 h', { wallKind: 'exitEnclosure', wallRatingMin: 59, fireRatingMin: 45 }, 'no'],
    ['wall over 1 h, door 60', { wallKind: 'exitEnclosure', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
    ['2 h stair, door 89', { wallKind: 'exitEnclosure', wallRatingMin: 120, fireRatingMin: 89 }, 'yes'],
    ['2 h stair, door 90', { wallKind: 'exitEnclosure', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
    ['wall over 2 h, door 90', { wallKind: 'exitEnclosure', wallRatingMin: 121, fireRatingMin: 90 }, 'yes'],
    ['3 h shaft, door 179', { wallKind: 'exitEnclosure', wallRatingMin: 180, fireRatingMin: 179 }, 'yes'],
    ['3 h shaft, door 180', { wallKind: 'exitEnclosure', wallRatingMin: 180, fireRatingMin: 180 }, 'no'],
    ['fire barrier', { wallKind: 'fireBarrier', wallRatingMin: 60, fireRatingMin: 45 }, 'no'],
    ['wall not known', { wallKind: 'exitEnclosure', fireRatingMin: 60 }, 'unknown'],
  ),
});
