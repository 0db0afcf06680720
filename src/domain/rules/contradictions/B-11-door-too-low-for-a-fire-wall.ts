import { under } from '../../codes/sections.ts';
import { all, any, is, over, under as below } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      '2 h wall, door 89',
      { wallKind: 'fireWall', wallRatingMin: 120, fireRatingMin: 89 },
      'yes',
      { does: 'refuse fireRatingMin' },
    ],
    ['2 h wall, door 90', { wallKind: 'fireWall', wallRatingMin: 120, fireRatingMin: 90 }, 'no'],
    ['wall over 1 h, door 60', { wallKind: 'fireWall', wallRatingMin: 61, fireRatingMin: 60 }, 'yes'],
    ['1 h leaf of a double wall', { wallKind: 'fireWall', wallRatingMin: 60, fireRatingMin: 60 }, 'no'],
    ['wall over 2 h, door 90', { wallKind: 'fireWall', wallRatingMin: 121, fireRatingMin: 90 }, 'yes'],
    ['4 h wall, door 179', { wallKind: 'fireWall', wallRatingMin: 240, fireRatingMin: 179 }, 'yes'],
    ['4 h wall, door 180', { wallKind: 'fireWall', wallRatingMin: 240, fireRatingMin: 180 }, 'no'],
    ['corridor', { wallKind: 'corridor', wallRatingMin: 240, fireRatingMin: 20 }, 'no'],
    ['wall not known', { wallKind: 'fireWall', fireRatingMin: 90 }, 'unknown'],
  ),
});
