import { text, under as cite } from '../../codes/sections.ts';
import { all, atMost, is, isKnown } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** Nobody is asked for the label of an unrated door; an answer that is there counts. */
const labeledZero = all(
  isKnown('fireLabel'),
  atMost('fireRatingMin', 0),
  is('fireLabel', 'seen', 'illegible', 'removed'),
);

export const B86 = defineRule({
  id: 'B-86',
  title: 'A label on a door entered as unrated',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), cite('openingProtectives')],
  confidence: 'project',

  why: 'A label is there for a reason; find the reason before ignoring the label.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: labeledZero,
      says: 'The door is entered with 0 min and it has, or had, a fire label; enter the minutes of the label, or have someone show that this wall requires none.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: labeledZero,
      says: 'A labeled door is about to be treated as an ordinary one: a reviewer decides which it is.',
    },
  ],
});
