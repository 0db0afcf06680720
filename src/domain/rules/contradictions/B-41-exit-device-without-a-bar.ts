import { text, under } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B41 = defineRule({
  id: 'B-41',
  title: 'An exit device without a bar',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('panicHardware')],
  confidence: 'project',
  why: 'An exit device is the bar and its latch in one.',
  clauses: [
    {
      effect: 'finding',
      field: 'panicPresent',
      severity: 'refuse',
      when: all(is('latch', 'rimExit', 'verticalRods', 'rimPlusRods', 'railExit'), no('panicPresent')),
      says: 'The latch entered is {latch}, yet no push bar was seen on the egress side; look from the inside again.',
    },
  ],
});
