import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B18 = defineRule({
  id: 'B-18',
  title: 'A rated door without a frame',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('openingProtectives')],
  confidence: 'project',
  why: 'A fire door assembly is the leaf and a labeled frame together.',
  clauses: [
    {
      effect: 'finding',
      field: 'frameMaterial',
      severity: 'refuse',
      when: all(is('frameMaterial', 'none', 'posts'), over('fireRatingMin', 0)),
      says: 'The door is to be rated {fireRatingMin} and has no frame that could carry a label; check frame and rating.',
    },
  ],
});
