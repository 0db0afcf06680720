import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const pair = {
  egressRole: 'exitAccess',
  doorType: 'pair',
  roomUse: 'office',
  occupancyGroup: 'B',
  inactiveBolts: 'manualFlush',
  occupantLoad: 49,
  sprinklered: true,
  sprinklerKind: 'nfpa13',
  inactiveNeededForCapacity: true,
  fireRatingMin: 0,
  wallRatingMin: 0,
  inactiveHasHardware: false,
} as const;

const large = { ...pair, occupantLoad: 50 } as const;

const dummy = { ...pair, inactiveHasHardware: true } as const;

/** Pairs the rule does not speak of, and the groups it does; `facts` is a pair the clause says yes to. */
function around(clause: string, facts: typeof pair | typeof large | typeof dummy): readonly CaseRow[] {
  return [
    ...(['F-1', 'F-2', 'S-1', 'S-2'] as const).map(
      (occupancyGroup): CaseRow => [
        `Group ${occupancyGroup}`,
        { ...facts, occupancyGroup },
        'yes',
        { clause },
      ],
    ),
    ['shop', { ...facts, occupancyGroup: 'M' }, 'no', { clause }],
    ['single leaf', { ...facts, doorType: 'single' }, 'no', { clause }],
    ['automatic bolts', { ...facts, inactiveBolts: 'automaticFlush' }, 'no', { clause }],
    ['storage room, R-111', { ...facts, roomUse: 'storage' }, 'no', { clause }],
    ['equipment room, R-111', { ...facts, roomUse: 'equipment' }, 'no', { clause }],
    ['bolts not known', without(facts, 'inactiveBolts'), 'unknown', { clause }],
  ];
}

export const R112Cases = cases(
  ['office pair for 49', pair, 'yes', { clause: 'a', does: 'permit' }],
  ['office pair for 50, leaf needed', large, 'no', { clause: 'a' }],
  [
    'office pair for 50, sprinklered, leaf not needed',
    { ...large, inactiveNeededForCapacity: false },
    'yes',
    { clause: 'a' },
  ],
  [
    'office pair for 50, no sprinklers, leaf not needed',
    { ...large, sprinklered: false, sprinklerKind: 'nfpa13', inactiveNeededForCapacity: false },
    'no',
    { clause: 'a' },
  ],
  [
    'office pair for 49, no sprinklers',
    { ...pair, sprinklered: false, sprinklerKind: 'nfpa13' },
    'yes',
    { clause: 'a' },
  ],
  ['rated pair', { ...pair, fireRatingMin: 45 }, 'no', { clause: 'a' }],
  ['dummy lever on the inactive leaf', dummy, 'no', { clause: 'a' }],
  ['load not known', without(pair, 'occupantLoad'), 'unknown', { clause: 'a' }],
  ...around('a', pair),
  ['dummy lever on the inactive leaf', dummy, 'yes', { clause: 'b', does: 'modify locksmith' }],
  ['nothing on the inactive leaf', pair, 'no', { clause: 'b' }],
  ...around('b', dummy),
  ['office pair for 50, leaf needed', large, 'yes', { clause: 'd', does: ['automaticFlushBolts'] }],
  ['office pair for 49', pair, 'no', { clause: 'd' }],
  [
    'office pair for 50, sprinklered, leaf not needed',
    { ...large, inactiveNeededForCapacity: false },
    'no',
    { clause: 'd' },
  ],
  [
    'office pair for 50, no sprinklers, leaf not needed',
    { ...large, sprinklered: false, sprinklerKind: 'nfpa13', inactiveNeededForCapacity: false },
    'yes',
    { clause: 'd' },
  ],
  ['cabinet', { ...large, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'd' }],
  ...around('d', large),
);
