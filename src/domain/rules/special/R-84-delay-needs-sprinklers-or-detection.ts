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
  note: 'That only a system of NFPA 13 counts (IBC 903.3.1.1) was read for 2018; NFPA 101 is held to the same.',
  why: 'The delay is bearable only because a fire cancels it by itself.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(no('fullSprinklers'), no('detectionThroughout')),
      of: { release: ['delayed'] },
      says: 'The building has neither a full sprinkler system (NFPA 13) nor smoke or heat detection throughout, so nothing would cancel the delay in a fire.',
    },
  ],
  cases: cases(
    [
      'neither',
      { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
      'yes',
      { on, does: 'prohibit' },
    ],
    [
      'sprinklers only',
      { sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
      'no',
      { on },
    ],
    [
      'detection only',
      { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: true },
      'no',
      { on },
    ],
    ['sprinklers, detection not asked', { sprinklered: true, sprinklerKind: 'nfpa13' }, 'no', { on }],
    [
      'no sprinklers, detection not asked',
      { sprinklered: false, sprinklerKind: 'nfpa13' },
      'unknown',
      { on },
    ],
    ['nothing surveyed', {}, 'unknown', { on }],
    [
      'a free bar is not meant',
      { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
      'no',
      { on: 'exitTrim/secure/free' },
    ],
    [
      'apartments, full system',
      { occupancyGroup: 'R-2', sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
      'no',
      { on },
    ],
    [
      'apartments, NFPA 13R',
      { occupancyGroup: 'R-2', sprinklered: true, sprinklerKind: 'nfpa13R', detectionThroughout: false },
      'yes',
      { on },
    ],
    [
      'apartments, kind not known',
      { occupancyGroup: 'R-2', sprinklered: true, detectionThroughout: false },
      'unknown',
      { on },
    ],
    [
      'offices, kind not asked',
      { occupancyGroup: 'B', sprinklered: true, detectionThroughout: false },
      'no',
      { on },
    ],
  ),
});
