import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B40 = defineRule({
  id: 'B-40',
  title: 'A push bar together with a lever lock or bolt',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('panicHardware')],
  confidence: 'project',
  why: 'A push bar draws its own latch, so beside it no lever latch or bolt may hold the leaf. A mortise latch is left out, because some bars drive one.',
  clauses: [
    {
      effect: 'finding',
      field: 'latch',
      severity: 'refuse',
      when: all(
        yes('panicPresent'),
        is(
          'latch',
          'bored',
          'boredPlusDeadbolt',
          'deadboltOnly',
          'mortiseDeadbolt',
          'deadlatch',
          'hookbolt',
          'patch',
        ),
      ),
      says: 'A push bar was seen and the latch entered is {latch}; either the bar draws another latch, or a second lock holds people in. Look again.',
    },
  ],
  cases: cases(
    ['bar and another lock', { panicPresent: true, latch: 'bored' }, 'yes', { does: 'refuse latch' }],
    ['bar and another lock', { panicPresent: true, latch: 'boredPlusDeadbolt' }, 'yes'],
    ['bar and another lock', { panicPresent: true, latch: 'deadboltOnly' }, 'yes'],
    ['bar and another lock', { panicPresent: true, latch: 'mortiseDeadbolt' }, 'yes'],
    ['bar and another lock', { panicPresent: true, latch: 'deadlatch' }, 'yes'],
    ['bar and another lock', { panicPresent: true, latch: 'hookbolt' }, 'yes'],
    ['bar and another lock', { panicPresent: true, latch: 'patch' }, 'yes'],
    ['bar with its own latch', { panicPresent: true, latch: 'rimExit' }, 'no'],
    ['bar with its own latch', { panicPresent: true, latch: 'mortise' }, 'no'],
    ['lever lock, no bar', { panicPresent: false, latch: 'bored' }, 'no'],
    ['latch not seen', { panicPresent: true }, 'unknown'],
  ),
});
