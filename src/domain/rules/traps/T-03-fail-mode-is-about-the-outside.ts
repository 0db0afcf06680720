import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T03 = defineRule({
  id: 'T-03',
  title: 'Fail mode speaks of the outside only',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '', 'Fail safe and fail secure')],
  confidence: 'secondary',
  why: 'The inside lever or bar draws the latch by hand in either fail mode.',
  clauses: [
    {
      effect: 'permit',
      when: yes('isEgress'),
      of: { family: ['lock', 'exitDevice'], failMode: ['secure'], release: ['free'] },
      says: 'Fail secure keeps only the outside locked when power is lost; the lever or bar inside opens always, so it may stand on an egress door.',
    },
  ],
});
