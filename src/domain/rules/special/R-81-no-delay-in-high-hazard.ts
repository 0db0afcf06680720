import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const R81 = defineRule({
  id: 'R-81',
  title: 'No delayed egress in high hazard',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'secondary',
  why: 'A fire or explosion in a high-hazard room leaves no fifteen seconds to wait.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('groupH'),
      of: { release: ['delayed'] },
      says: 'Group {occupancyGroup} is high hazard, and no one may be held there even for 15 s.',
    },
  ],
  cases: cases(
    ['hazardous storage, H-3', { occupancyGroup: 'H-3' }, 'yes', { on, does: 'prohibit' }],
    ['delayed magnet in H-5', { occupancyGroup: 'H-5' }, 'yes', { on: 'delayedMagnet/safe/delayed' }],
    ['warehouse, S-1', { occupancyGroup: 'S-1' }, 'no', { on }],
    ['the free bar is not meant', { occupancyGroup: 'H-3' }, 'no', { on: 'exitTrim/secure/free' }],
    ['group not known', {}, 'unknown', { on }],
  ),
});
