import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B28 = defineRule({
  id: 'B-28',
  title: 'A coiling door or grille at a stair',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('doorSwing')],
  confidence: 'project',
  why: 'Stairs and horizontal exits have side-hinged doors that anybody can push open.',
  clauses: [
    {
      effect: 'finding',
      field: 'doorType',
      severity: 'refuse',
      when: all(
        is('doorType', 'overhead', 'grille', 'turnstile', 'turnstileFull', 'turnstileSecurity', 'revolving'),
        is('egressRole', 'stairEntry', 'stairDischarge', 'horizontalExit'),
      ),
      says: '{doorType} cannot be the door of a stair or horizontal exit; check the door type and its egress role.',
    },
  ],
});
