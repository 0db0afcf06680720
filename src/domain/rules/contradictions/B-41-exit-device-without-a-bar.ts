import { text, under } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'device without a bar',
      { latch: 'rimExit', panicPresent: false },
      'yes',
      { does: 'refuse panicPresent' },
    ],
    ['device without a bar', { latch: 'verticalRods', panicPresent: false }, 'yes'],
    ['device without a bar', { latch: 'rimPlusRods', panicPresent: false }, 'yes'],
    ['device without a bar', { latch: 'railExit', panicPresent: false }, 'yes'],
    ['device with its bar', { latch: 'rimExit', panicPresent: true }, 'no'],
    ['lever lock', { latch: 'bored', panicPresent: false }, 'no'],
    ['bar not seen', { latch: 'rimExit' }, 'unknown'],
  ),
});
