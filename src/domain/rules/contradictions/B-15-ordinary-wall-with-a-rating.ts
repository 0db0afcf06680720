import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B15 = defineRule({
  id: 'B-15',
  title: 'An ordinary wall with a rating',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('openingProtectives')],
  confidence: 'project',
  why: 'The kind of wall decides which door it needs, and an unrated wall cannot have minutes.',
  clauses: [
    {
      effect: 'finding',
      field: 'wallKind',
      severity: 'refuse',
      when: all(is('wallKind', 'none'), over('wallRatingMin', 0)),
      says: 'The wall is entered as ordinary and unrated, yet with {wallRatingMin}; find out what it separates.',
    },
  ],
});
