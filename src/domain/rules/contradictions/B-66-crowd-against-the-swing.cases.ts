import { cases } from '../rule.ts';

export const B66Cases = cases(
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
);
