import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** What is often left standing in an old building and would not be built today. */
const oftenRelieved = any(
  all(
    yes('fireRated'),
    any(
      is('closing', 'none'),
      is('latch', 'pushPull', 'roller'),
      is('fireLabel', 'illegible', 'removed', 'none'),
    ),
  ),
  all(yes('panicRequired'), no('hasExitDevice')),
  all(isKnown('clearWidthIn'), under('clearWidthIn', 'clearWidthMinIn')),
  all(yes('fireRated'), is('inactiveBolts', 'manualFlush')),
);

export const R163 = defineRule({
  id: 'R-163',
  title: 'An existing opening that is not altered',
  family: 'access',
  book: 'project',
  cites: [text('ifc', '11', 'Existing buildings'), text('nfpa101', '', 'Chapters on existing uses')],
  confidence: 'secondary',
  note: 'Which code governs an existing opening varies by jurisdiction; this schedule measures against new work. A label that is missing or cannot be read is named here because provisions on existing buildings accept some corridor doors without one (from general knowledge); R-53 has it relabeled whatever becomes of that.',
  why: 'Existing doors are judged by the fire code and the existing-building chapters, not by the code for new work.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'note',
      when: all(is('workStatus', 'existing'), oftenRelieved),
      says: 'The opening is not being altered, and what was found could not be built today: a reviewer decides whether an existing-building provision covers it.',
    },
  ],
});
