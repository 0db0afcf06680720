import { text } from '../../codes/sections.ts';
import { all, any, isKnown, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N90 = defineRule({
  id: 'N-90',
  title: 'Delayed egress only where the owner asks',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A delay is never added to an egress door unless someone wants it and answers for it.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(not(all(isKnown('wishDelayedEgress'), yes('wishDelayedEgress'))), no('isEgress')),
      of: { release: ['delayed'] },
      says: 'No delay was requested here, or no one leaves this way, so none is offered.',
    },
  ],
});
