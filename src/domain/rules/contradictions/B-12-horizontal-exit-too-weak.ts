import { under } from '../../codes/sections.ts';
import { all, any, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B12 = defineRule({
  id: 'B-12',
  title: 'A horizontal exit rated below the minimum',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('horizontalExits'), under('openingProtectives')],
  confidence: 'memory',
  why: 'People take refuge behind this wall, so it is rated at least 2 h and its door 90 min.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'wallRatingMin',
      severity: 'refuse',
      when: all(is('wallKind', 'horizontalExit'), below('wallRatingMin', 120)),
      says: 'The wall is entered as a horizontal exit of {wallRatingMin}, and such a wall is rated at least 2 h; check what the wall is.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(
        is('wallKind', 'horizontalExit'),
        any(
          below('fireRatingMin', 'doorMinInWall2h'),
          all(over('wallRatingMin', 120), below('fireRatingMin', 'doorMinInWall4h')),
        ),
      ),
      says: 'The door of a horizontal exit is rated at least 90 min, and 180 in a wall above 2 h; this one has {fireRatingMin}. Check the label.',
    },
  ],
});
