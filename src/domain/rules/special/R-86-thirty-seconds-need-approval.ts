import { under } from '../../codes/sections.ts';
import { all, not, yes } from '../../logic/condition.ts';
import { approved30, unsigned } from '../health/conditions.ts';
import { defineRule } from '../rule.ts';

export const R86 = defineRule({
  id: 'R-86',
  title: 'A delay of 30 s needs the authority’s approval',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'read',
  why: 'Fifteen seconds is the rule; doubling it is for the authority to decide, not the owner.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), yes('wishDelay30s')),
      of: { release: ['delayed'] },
      items: ['ahjApproval'],
      says: 'A delay of 30 s needs the authority’s approval in writing; without it the delay is set to 15 s.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('wishDelay30s')),
      of: { release: ['delayed'] },
      says: 'A reviewer checks the approval for 30 s against this door before it is issued.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(yes('isEgress'), approved30, yes('swingsWithEgress'), not(unsigned)),
      of: { release: ['delayed'] },
      items: ['signDelayed30'],
      says: 'The sign on the leaf names 30 seconds, because that is the approved delay.',
    },
  ],
});
