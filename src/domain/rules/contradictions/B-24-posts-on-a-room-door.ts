import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ['door on posts', { frameMaterial: 'posts', doorType: 'single' }, 'yes', { does: 'warn frameMaterial' }],
    ['door on posts', { frameMaterial: 'posts', doorType: 'pair' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'doubleEgressPair' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'doubleActing' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'balanced' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'slidingManual' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'slidingAutomatic' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'folding' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'revolving' }, 'yes'],
    ['door on posts', { frameMaterial: 'posts', doorType: 'overhead' }, 'yes'],
    ['gate on posts', { frameMaterial: 'posts', doorType: 'gateSwing' }, 'no'],
    ['door in a steel frame', { frameMaterial: 'hollowMetal', doorType: 'single' }, 'no'],
    ['door type not known', { frameMaterial: 'posts' }, 'unknown'],
  ),
});
