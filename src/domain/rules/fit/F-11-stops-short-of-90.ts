import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F11 = defineRule({
  id: 'F-11',
  title: 'Leaf that stops short of 90 degrees',
  family: 'fit',
  book: 'ada',
  cites: [text('ada', '404.2.3', 'Clear width')],
  confidence: 'inferred',
  why: 'The leaf stands in the opening and takes from the clear width, which counts at 90 degrees.',
  clauses: [
    {
      effect: 'finding',
      field: 'opensTo90',
      severity: 'warn',
      when: all(yes('isSwinging'), no('opensTo90')),
      says: 'The leaf stops short of 90 degrees: measure the clear width that is left; about 3 in is lost at 85 degrees.',
    },
  ],
});
