import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B24 = defineRule({
  id: 'B-24',
  title: 'Gate posts around a room door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Posts carry gates and lanes, not doors in a wall.',
  clauses: [
    {
      effect: 'finding',
      field: 'frameMaterial',
      severity: 'warn',
      when: all(
        is('frameMaterial', 'posts'),
        is(
          'doorType',
          'single',
          'pair',
          'doubleEgressPair',
          'doubleActing',
          'balanced',
          'slidingManual',
          'slidingAutomatic',
          'folding',
          'revolving',
          'overhead',
        ),
      ),
      says: 'Gate posts are entered as the frame of a door that is not a gate; check frame and door type.',
    },
  ],
});
