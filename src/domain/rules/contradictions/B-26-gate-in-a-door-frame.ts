import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B26 = defineRule({
  id: 'B-26',
  title: 'A gate hung in a door frame',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Gates hang on posts, and a steel or wood door frame says that this may be a door.',
  clauses: [
    {
      effect: 'finding',
      field: 'doorType',
      severity: 'warn',
      when: all(
        is('doorType', 'gateSwing', 'gateSlide'),
        is('frameMaterial', 'hollowMetal', 'wood', 'aluminium'),
      ),
      says: 'A gate is entered with a frame of {frameMaterial}; check whether it is a gate on posts or a door.',
    },
  ],
  cases: cases(
    [
      'gate in a door frame',
      { doorType: 'gateSwing', frameMaterial: 'hollowMetal' },
      'yes',
      { does: 'warn doorType' },
    ],
    ['gate in a door frame', { doorType: 'gateSwing', frameMaterial: 'wood' }, 'yes'],
    ['gate in a door frame', { doorType: 'gateSwing', frameMaterial: 'aluminium' }, 'yes'],
    ['gate in a door frame', { doorType: 'gateSlide', frameMaterial: 'hollowMetal' }, 'yes'],
    ['gate in a door frame', { doorType: 'gateSlide', frameMaterial: 'wood' }, 'yes'],
    ['gate in a door frame', { doorType: 'gateSlide', frameMaterial: 'aluminium' }, 'yes'],
    ['gate on posts', { doorType: 'gateSwing', frameMaterial: 'posts' }, 'no'],
    ['door', { doorType: 'single', frameMaterial: 'hollowMetal' }, 'no'],
    ['frame not known', { doorType: 'gateSwing' }, 'unknown'],
  ),
});
