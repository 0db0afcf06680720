import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R11 = defineRule({
  id: 'R-11',
  title: 'Openings with no egress duty may be locked, once a reviewer agrees',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc')],
  confidence: 'memory',
  why: 'A cabinet or a sealed-off opening has no egress duty, but someone may have misjudged the size or the sealing.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'noOccupiedSpace', 'vehicleDoor', 'sealedOff'),
      of: { not: { release: ['free', 'stairReentry'] } },
      says: 'This lock is allowed only because no one has to leave by this opening: no one can be behind it, or people have another door. A reviewer confirms that.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'egressRole',
      severity: 'refuse',
      when: all(
        is('egressRole', 'noOccupiedSpace', 'vehicleDoor', 'sealedOff'),
        any(yes('exitSign'), yes('hasExitDevice')),
      ),
      says: 'The opening is entered as having no egress duty, yet it has an exit sign or an exit device; remove these or enter its true role.',
    },
  ],
});
