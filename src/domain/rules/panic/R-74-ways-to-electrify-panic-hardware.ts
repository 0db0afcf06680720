import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R74 = defineRule({
  id: 'R-74',
  title: 'Ways to add access control to panic hardware',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('delayedEgress')],
  confidence: 'secondary',
  why: 'The bar opens the door whatever the electrified part does, so the outside may be controlled freely.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: yes('panicRequired'),
      of: { exitDevice: true, release: ['free', 'stairReentry'] },
      says: 'A strike behind the bar, electrified outside trim or electric latch retraction is allowed here, because one push on the bar always opens the door.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('panicRequired'),
      of: { release: ['delayed'] },
      says: 'Panic hardware with a delay is allowed only where the use of the space allows delayed egress at all; assembly, schools and high hazard nearly never do.',
    },
  ],
});
