import { under } from '../../codes/sections.ts';
import { all, any, atLeast, is, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B66 = defineRule({
  id: 'B-66',
  title: 'Occupant load against the swing of the leaf',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('doorSwing')],
  confidence: 'secondary',
  why: 'Fifty people pushing cannot pull a leaf toward themselves; in high hazard no one should have to.',
  clauses: [
    {
      effect: 'finding',
      field: 'swingsWithEgress',
      severity: 'refuse',
      when: all(
        yes('isEgress'),
        is('doorType', 'single', 'pair', 'balanced', 'gateSwing'),
        no('swingsWithEgress'),
        any(atLeast('occupantLoad', 'swingWithEgressLoad'), yes('groupH')),
      ),
      says: 'The leaf swings against people who leave, and at this load or hazard it must swing with them; check the swing and the load, or reverse the swing.',
    },
  ],
  cases: cases(
    [
      '50 people',
      {
        egressRole: 'exitAccess',
        doorType: 'single',
        swingsWithEgress: false,
        occupantLoad: 50,
        occupancyGroup: 'B',
      },
      'yes',
      { does: 'refuse swingsWithEgress' },
    ],
    [
      '50 people',
      {
        egressRole: 'exitAccess',
        doorType: 'pair',
        swingsWithEgress: false,
        occupantLoad: 50,
        occupancyGroup: 'B',
      },
      'yes',
    ],
    [
      '50 people',
      {
        egressRole: 'exitAccess',
        doorType: 'balanced',
        swingsWithEgress: false,
        occupantLoad: 50,
        occupancyGroup: 'B',
      },
      'yes',
    ],
    [
      '50 people',
      {
        egressRole: 'exitAccess',
        doorType: 'gateSwing',
        swingsWithEgress: false,
        occupantLoad: 50,
        occupancyGroup: 'B',
      },
      'yes',
    ],
    [
      '49 people',
      {
        egressRole: 'exitAccess',
        doorType: 'single',
        swingsWithEgress: false,
        occupantLoad: 49,
        occupancyGroup: 'B',
      },
      'no',
    ],
    [
      'three people in high hazard',
      {
        egressRole: 'exitAccess',
        doorType: 'single',
        swingsWithEgress: false,
        occupantLoad: 3,
        occupancyGroup: 'H-2',
      },
      'yes',
    ],
    [
      'swings with egress',
      {
        egressRole: 'exitAccess',
        doorType: 'single',
        swingsWithEgress: true,
        occupantLoad: 90,
        occupancyGroup: 'H-2',
      },
      'no',
    ],
    [
      'opposite-swinging pair',
      {
        egressRole: 'exitAccess',
        doorType: 'doubleEgressPair',
        swingsWithEgress: false,
        occupantLoad: 90,
        occupancyGroup: 'H-2',
      },
      'no',
    ],
    [
      'cabinet',
      {
        egressRole: 'noOccupiedSpace',
        doorType: 'single',
        swingsWithEgress: false,
        occupantLoad: 90,
        occupancyGroup: 'H-2',
      },
      'no',
    ],
    [
      'swing not seen',
      { egressRole: 'exitAccess', doorType: 'single', occupantLoad: 90, occupancyGroup: 'B' },
      'unknown',
    ],
  ),
});
