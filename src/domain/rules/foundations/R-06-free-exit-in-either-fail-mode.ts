import { under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R06 = defineRule({
  id: 'R-06',
  title: 'Lever or bar that always opens: either fail mode lets people out',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress')],
  confidence: 'secondary',
  note: 'A strike on a rated door goes to R-31 and R-32, the stair side of a stair door to R-54.',
  why: 'Fail safe and fail secure describe who can get in when power is lost; the inside lever or bar works either way.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(yes('isEgress'), no('stairSideToLock')),
      of: { family: ['lock', 'exitDevice'], release: ['free'] },
      says: 'This lock stays latched and always opens from inside, so it may fail safe or fail secure; fail secure is the usual choice.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: all(yes('isEgress'), no('stairSideToLock'), no('fireRated')),
      of: { family: ['strike'], release: ['free'] },
      says: 'The lever or bar opens the door without the strike, so on this unrated door the strike may fail safe or fail secure; fail secure is the usual choice.',
    },
  ],
});
