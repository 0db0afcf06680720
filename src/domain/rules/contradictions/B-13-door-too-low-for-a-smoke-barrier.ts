import { under } from '../../codes/sections.ts';
import { all, is, not, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B13 = defineRule({
  id: 'B-13',
  title: 'Door rated below what its smoke barrier requires',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('smokeBarrierDoors'), under('openingProtectives')],
  confidence: 'secondary',
  note: 'Opposite-swinging pairs across corridors in hospitals, assisted living and ambulatory care are not fire doors and are left out.',
  why: 'Patients are moved behind the smoke barrier instead of out of the building.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'refuse',
      when: all(
        is('wallKind', 'smokeBarrier'),
        over('wallRatingMin', 0),
        below('fireRatingMin', 'doorMinInCorridor'),
        not(is('doorType', 'doubleEgressPair')),
      ),
      says: 'A smoke barrier takes a door of 20 min unless it is an opposite-swinging pair in health care; this door has {fireRatingMin}. Check the label and how the leaves swing.',
    },
  ],
});
