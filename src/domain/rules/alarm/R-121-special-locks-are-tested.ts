import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R121 = defineRule({
  id: 'R-121',
  title: 'A special lock is acceptance tested and the record kept',
  family: 'alarm',
  book: 'practice',
  cites: [text('practice', '', 'Acceptance test of special locking')],
  confidence: 'memory',
  note: 'Locks with stair release are counted with the special arrangements.',
  why: 'Each release must be seen working once, because the next time may be the fire.',
  clauses: [
    {
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['doorSwitch', 'sensor', 'delayed', 'controlled', 'lobby', 'stairReentry'] },
      items: ['acceptanceTest'],
      says: 'Before the door goes into service, test power loss, fire alarm, manual release and any timing at this door, and record the results.',
    },
  ],
});
