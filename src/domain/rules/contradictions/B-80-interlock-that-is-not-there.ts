import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B80 = defineRule({
  id: 'B-80',
  title: 'An interlock holds people in, but none is wanted',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), text('practice', '', 'Control vestibules')],
  confidence: 'project',
  why: 'Whether a door can be held shut against egress must be clear.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishInterlock',
      severity: 'refuse',
      when: all(yes('interlockHoldsEgress'), no('wishInterlock')),
      says: 'An interlock is entered as holding people in, and this door is entered as not interlocked; check which is right.',
    },
  ],
});
