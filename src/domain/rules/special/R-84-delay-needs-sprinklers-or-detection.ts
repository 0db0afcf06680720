import { under } from '../../codes/sections.ts';
import { all, no } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const R84 = defineRule({
  id: 'R-84',
  title: 'Delayed egress needs sprinklers or detection throughout',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'secondary',
  why: 'The delay is bearable only because a fire cancels it by itself.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(no('sprinklered'), no('detectionThroughout')),
      of: { release: ['delayed'] },
      says: 'The building has neither sprinklers nor smoke or heat detection throughout, so nothing would cancel the delay in a fire.',
    },
  ],
  cases: cases(
    ['neither', { sprinklered: false, detectionThroughout: false }, 'yes', { on, does: 'prohibit' }],
    ['sprinklers only', { sprinklered: true, detectionThroughout: false }, 'no', { on }],
    ['detection only', { sprinklered: false, detectionThroughout: true }, 'no', { on }],
    ['sprinklers, detection not asked', { sprinklered: true }, 'no', { on }],
    ['no sprinklers, detection not asked', { sprinklered: false }, 'unknown', { on }],
    ['nothing surveyed', {}, 'unknown', { on }],
    [
      'a free bar is not meant',
      { sprinklered: false, detectionThroughout: false },
      'no',
      { on: 'exitTrim/secure/free' },
    ],
  ),
});
