import { under } from '../../codes/sections.ts';
import { any, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R14 = defineRule({
  id: 'R-14',
  title: 'Code, edition and local amendments are confirmed before the schedule goes out',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa')],
  confidence: 'secondary',
  why: 'Editions differ in what they allow, and cities and states change the door chapters more than most others.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'must',
      when: any(no('basisConfirmed'), no('amendmentsReviewed')),
      says: 'The adopted code or the local amendments have not been confirmed; every answer here depends on them.',
    },
  ],
});
