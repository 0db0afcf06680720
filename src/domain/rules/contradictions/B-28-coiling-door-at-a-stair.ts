import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ['in a stair', { doorType: 'overhead', egressRole: 'stairEntry' }, 'yes', { does: 'refuse doorType' }],
    ['in a stair', { doorType: 'grille', egressRole: 'stairEntry' }, 'yes'],
    ['in a stair', { doorType: 'turnstile', egressRole: 'stairEntry' }, 'yes'],
    ['in a stair', { doorType: 'turnstileFull', egressRole: 'stairEntry' }, 'yes'],
    ['in a stair', { doorType: 'turnstileSecurity', egressRole: 'stairEntry' }, 'yes'],
    ['in a stair', { doorType: 'revolving', egressRole: 'stairEntry' }, 'yes'],
    ['out of a stair or at a horizontal exit', { doorType: 'overhead', egressRole: 'stairDischarge' }, 'yes'],
    ['out of a stair or at a horizontal exit', { doorType: 'overhead', egressRole: 'horizontalExit' }, 'yes'],
    ['shop front', { doorType: 'overhead', egressRole: 'exteriorExit' }, 'no'],
    ['hinged stair door', { doorType: 'single', egressRole: 'stairEntry' }, 'no'],
    ['role not known', { doorType: 'overhead' }, 'unknown'],
  ),
});
