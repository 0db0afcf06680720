import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R81 = defineRule({
  id: 'R-81',
  title: 'No delayed egress in high hazard',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'secondary',
  why: 'A fire or explosion in a high-hazard room leaves no fifteen seconds to wait.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('groupH'),
      of: { release: ['delayed'] },
      says: 'Group {occupancyGroup} is high hazard, and no one may be held there even for 15 s.',
    },
  ],
});
