import { text, under as cite } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B85 = defineRule({
  id: 'B-85',
  title: 'A rated door in an ordinary wall',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), cite('openingProtectives')],
  confidence: 'project',

  why: 'A fire door is there for its wall; where the wall requires none, one of the two was entered wrong.',
  clauses: [
    {
      effect: 'finding',
      field: 'wallKind',
      severity: 'warn',
      when: all(over('fireRatingMin', 0), is('wallKind', 'none')),
      says: 'The door is to be rated {fireRatingMin} and its wall is entered as ordinary; find out what the wall separates, or why the door needs a rating. It is treated as a fire door.',
    },
  ],
});
