import { under } from '../../codes/sections.ts';
import { all, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B09 = defineRule({
  id: 'B-09',
  title: 'Door rated below what its corridor requires',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('openingProtectives')],
  confidence: 'secondary',
  why: 'A rated corridor is the exit access for everyone on the floor.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(
        is('wallKind', 'corridor'),
        over('wallRatingMin', 0),
        below('fireRatingMin', 'doorMinInCorridor'),
      ),
      says: 'A corridor wall of {wallRatingMin} takes a door of 20 min; the door has {fireRatingMin}. Check label and wall.',
    },
  ],
});
