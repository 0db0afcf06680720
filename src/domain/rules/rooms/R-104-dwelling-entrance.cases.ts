import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'strikeCylindrical/secure/free';

const alone = { ibc: null, nfpa101: 2021 } as const;

const unit = {
  egressRole: 'exitAccess',
  roomUse: 'dwellingEntrance',
  occupancyGroup: 'R-2',
  latch: 'boredPlusDeadbolt',
  unitOccupantLoad: 4,
} as const;

const large = { ...unit, unitOccupantLoad: 11 } as const;

/** The condition of each edition, for a clause that speaks when the second bolt is accepted (or when it is not). */
function byEdition(clause: string, whenAccepted: boolean, candidate?: string): readonly CaseRow[] {
  const at = { clause, ...(candidate === undefined ? {} : { on: candidate }) };
  const yesIf = (accepted: boolean) => (accepted === whenAccepted ? 'yes' : 'no');
  return [
    ['unit for 10, IBC 2021', { ...unit, unitOccupantLoad: 10 }, yesIf(true), at],
    ['unit for 11, IBC 2021', large, yesIf(false), at],
    ['unit for 11 with one exit, IBC 2021', { ...large, unitSingleExit: true }, yesIf(false), at],
    [
      'unit for 10, IBC 2018',
      { ...unit, unitOccupantLoad: 10 },
      yesIf(true),
      { ...at, basis: { ibc: 2018 } },
    ],
    ['unit for 11, IBC 2018', large, yesIf(false), { ...at, basis: { ibc: 2018 } }],
    [
      'one-exit unit for 11, IBC 2024',
      { ...large, unitSingleExit: true },
      yesIf(true),
      { ...at, basis: { ibc: 2024 } },
    ],
    [
      'two-exit unit for 4, IBC 2024',
      { ...unit, unitSingleExit: false },
      yesIf(false),
      { ...at, basis: { ibc: 2024 } },
    ],
    ['unit for 11, NFPA 101 alone', large, yesIf(true), { ...at, basis: alone }],
    ['unit for 11, both books', large, yesIf(false), { ...at, basis: { nfpa101: 2021 } }],
    ['unit for 11, no book', large, yesIf(false), { ...at, basis: { ibc: null } }],
    ['load not known', without(unit, 'unitOccupantLoad'), 'unknown', at],
  ];
}

/** Units and doors the clause does and does not speak of; `facts` is an apartment it says yes to. */
function around(clause: string, facts: typeof unit | typeof large, candidate?: string): readonly CaseRow[] {
  const at = { clause, ...(candidate === undefined ? {} : { on: candidate }) };
  return [
    ['hotel room', { ...facts, occupancyGroup: 'R-1' }, 'yes', at],
    ['house', { ...facts, occupancyGroup: 'R-3' }, 'yes', at],
    ['board-and-care unit', { ...facts, occupancyGroup: 'R-4' }, 'no', at],
    ['assisted-living unit', { ...facts, occupancyGroup: 'I-1.1' }, 'no', at],
    ['office of the building', { ...facts, roomUse: 'office' }, 'no', at],
    ['one motion', { ...facts, latch: 'mortiseDeadbolt', existingArrangement: 'freeLever' }, 'no', at],
  ] satisfies readonly CaseRow[];
}

export const R104Cases = cases(
  ['apartment entrance', unit, 'yes', { clause: 'a', on, does: 'permit' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'a', on }],
  ['room not known', {}, 'unknown', { clause: 'a', on }],
  ['a magnet is no such lock', unit, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ...byEdition('b', true),
  ...around('b', unit),
  [
    'chain on the door',
    { ...unit, latch: 'bored', existingArrangement: 'slideBolt' },
    'yes',
    { clause: 'b', does: 'permit' },
  ],
  [
    'deadbolt found',
    { ...unit, latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
    'yes',
    { clause: 'b' },
  ],
  [
    'deadbolt surveyed, nothing else found',
    { ...unit, existingArrangement: 'freeLever' },
    'yes',
    { clause: 'b' },
  ],
  ...byEdition('c', false, on),
  ...around('c', large, on),
  ...onEach(
    ['magnet/safe/sensor', 'boltMotor/safe/sensor', 'delayedMagnet/safe/delayed'],
    'large unit',
    large,
    'yes',
    { clause: 'c', does: 'prohibit' },
  ),
  ['a new lock replaces both', large, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ...byEdition('d', false),
  ...around('d', large),
  [
    'chain on the door',
    { ...large, latch: 'bored', existingArrangement: 'slideBolt' },
    'yes',
    { clause: 'd', does: 'modify locksmith' },
  ],
  [
    'deadbolt found',
    { ...large, latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
    'yes',
    { clause: 'd' },
  ],
  [
    'deadbolt surveyed, nothing else found',
    { ...large, existingArrangement: 'freeLever' },
    'yes',
    { clause: 'd' },
  ],
  ['rated entrance', { ...unit, fireRatingMin: 20 }, 'yes', { clause: 'e', does: 'caution' }],
  ['unrated entrance', { ...unit, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'e' }],
  ['rated office', { roomUse: 'office', fireRatingMin: 20 }, 'no', { clause: 'e' }],
  ['rating not known', unit, 'unknown', { clause: 'e' }],
);
