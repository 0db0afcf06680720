import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
