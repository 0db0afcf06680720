import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
