import { cases, type CaseRow } from '../rule.ts';

const both = { ibc: 2021, nfpa101: 2021 } as const;

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
} as const;

export const R72Cases = cases(
  ['50 under both', hall, 'yes', { basis: both, does: 'caution' }],
  ['49 under both', { ...hall, occupantLoad: 49 }, 'no', { basis: both }],
  ['99 under both', { ...hall, occupantLoad: 99 }, 'yes', { basis: both }],
  ['100 under both: the codes agree', { ...hall, occupantLoad: 100 }, 'no', { basis: both }],
  ['IBC alone', hall, 'no'],
  ['NFPA 101 alone', hall, 'no', { basis: { ibc: null, nfpa101: 2021 } }],
  ...(['A-1', 'A-2', 'A-4', 'A-5', 'E'] as const).map(
    (occupancyGroup): CaseRow => [
      `group ${occupancyGroup}`,
      { ...hall, occupancyGroup },
      'yes',
      { basis: both },
    ],
  ),
  ['office', { ...hall, occupancyGroup: 'B' }, 'no', { basis: both }],
  ['sliding door', { ...hall, doorType: 'slidingManual' }, 'no', { basis: both }],
  ['sealed off', { ...hall, egressRole: 'sealedOff' }, 'no', { basis: both }],
  [
    'watched stadium gate',
    {
      ...hall,
      doorType: 'gateSwing',
      occupancyGroup: 'A-5',
      safeDispersalArea: true,
      gateSupervised: true,
    },
    'no',
    { basis: both },
  ],
  [
    'watched arena gate',
    {
      ...hall,
      doorType: 'gateSwing',
      occupancyGroup: 'A-4',
      safeDispersalArea: true,
      gateSupervised: true,
    },
    'no',
    { basis: both },
  ],
  [
    'theater gate',
    { ...hall, doorType: 'gateSwing', safeDispersalArea: true, gateSupervised: true },
    'yes',
    { basis: both },
  ],
  [
    'stadium gate, no dispersal area',
    {
      ...hall,
      doorType: 'gateSwing',
      occupancyGroup: 'A-5',
      safeDispersalArea: false,
      gateSupervised: true,
    },
    'yes',
    { basis: both },
  ],
  [
    'stadium gate, nobody watches',
    {
      ...hall,
      doorType: 'gateSwing',
      occupancyGroup: 'A-5',
      safeDispersalArea: true,
      gateSupervised: false,
    },
    'yes',
    { basis: both },
  ],
  [
    'stadium door',
    { ...hall, occupancyGroup: 'A-5', safeDispersalArea: true, gateSupervised: true },
    'yes',
    { basis: both },
  ],
  [
    'load not known',
    { egressRole: 'exitAccess', doorType: 'single', occupancyGroup: 'A-3' },
    'unknown',
    { basis: both },
  ],
);
