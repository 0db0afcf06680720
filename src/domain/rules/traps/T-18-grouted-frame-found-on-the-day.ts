import { text } from '../../codes/sections.ts';
import { all, is, isKnown, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T18 = defineRule({
  id: 'T-18',
  title: 'Grouted frame found on installation day',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'Grout fills the pocket and the wire’s way, and costs about an hour of chiseling when nobody knew.',
  clauses: [
    {
      effect: 'finding',
      field: 'frameGrouted',
      severity: 'warn',
      when: all(
        is('frameMaterial', 'hollowMetal'),
        not(isKnown('frameGrouted')),
        not(is('workStatus', 'new')),
      ),
      says: 'Tap the steel frame or drill a pilot hole: whether it is grouted decides strike, wiring and labor.',
    },
  ],
});
