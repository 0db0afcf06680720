import { under } from '../../codes/sections.ts';
import { all, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R84 = defineRule({
  id: 'R-84',
  title: 'Delayed egress needs sprinklers or detection throughout',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'secondary',
  note: 'That only a system of NFPA 13 counts (IBC 903.3.1.1) was read for 2018; NFPA 101 is held to the same.',
  why: 'The delay is bearable only because a fire cancels it by itself.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(no('fullSprinklers'), no('detectionThroughout')),
      of: { release: ['delayed'] },
      says: 'The building has neither a full sprinkler system (NFPA 13) nor smoke or heat detection throughout, so nothing would cancel the delay in a fire.',
    },
  ],
});
