import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R114 = defineRule({
  id: 'R-114',
  title: 'Safe room or vault goes to a reviewer',
  family: 'rooms',
  book: 'practice',
  cites: [text('practice', '', 'No section covers a room meant to be locked on people')],
  confidence: 'memory',
  why: 'No section of any code covers a room that is meant to be locked with people in it.',
  clauses: [
    {
      key: 'a',
      effect: 'refer',
      when: is('roomUse', 'safeRoom'),
      says: 'This room is meant to be locked with people in it, and this schedule never decides that.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('roomUse', 'safeRoom'),
      says: 'A reviewer names how people inside get out, with and without power.',
    },
  ],
});
