import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B10 = defineRule({
  id: 'B-10',
  title: 'Door rated below what its fire partition requires',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('openingProtectives')],
  confidence: 'memory',
  why: 'Dwelling-unit and elevator-lobby partitions require more of the door than a corridor does.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(
        is('wallKind', 'otherPartition'),
        any(
          all(over('wallRatingMin', 0), below('fireRatingMin', 'doorMinInCorridor')),
          all(atLeast('wallRatingMin', 60), below('fireRatingMin', 'doorMinInBarrier1h')),
        ),
      ),
      says: 'A fire partition of {wallRatingMin} takes a door of 20 min at half an hour and 45 at 1 h; the door has {fireRatingMin}. Check both figures.',
    },
  ],
});
