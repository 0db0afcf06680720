import { onEach } from '../onEach.ts';
import { type CaseRow, cases, type Does } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

const bare = { ...rated, fireLabel: 'none', workStatus: 'existing' } as const;

const tenant = { workStatus: 'existing', wallKind: 'corridor', fireLabel: 'illegible' } as const;

/** Clauses that treat the opening as rated while nobody knows, and what each is asked of. */
const open: readonly (readonly [string, { on?: string }, { does?: Does }])[] = [
  ['a', {}, { does: 'warn fireLabel' }],
  ['c', {}, { does: 'signOff must' }],
  ['d', {}, { does: ['fieldLabel', 'fireLabelledHardware'] }],
  ['e', { on: 'strikeMortise/secure/free' }, { does: ['fireListedStrike'] }],
  ['f', { on: 'strikeMortise/safe/free' }, { does: 'prohibit' }],
  ['g', { on: 'boltMotor/safe/sensor' }, { does: 'prohibit' }],
];

const odd = { fireRatingMin: 0, wallRatingMin: 60, wallKind: 'corridor', fireLabel: 'seen' } as const;

export const R53Cases = cases(
  ['existing rated door, no label', bare, 'yes', { clause: 'a', does: 'warn fireLabel' }],
  ['altered rated door, no label', { ...bare, workStatus: 'altered' }, 'yes', { clause: 'a' }],
  ['label seen', { ...bare, fireLabel: 'seen' }, 'no', { clause: 'a' }],
  ['new opening', { ...bare, workStatus: 'new' }, 'no', { clause: 'a' }],
  ['unrated door in an unrated wall', { ...bare, ...unrated }, 'no', { clause: 'a' }],
  ['label not looked for', { ...rated, workStatus: 'existing' }, 'unknown', { clause: 'a' }],
  ['unrated door in a rated corridor', odd, 'yes', { clause: 'b', does: 'warn fireRatingMin' }],
  ['a wall rated one minute is rated', { ...odd, wallRatingMin: 1 }, 'yes', { clause: 'b' }],
  ['rated door in a rated corridor', { ...odd, fireRatingMin: 20 }, 'no', { clause: 'b' }],
  ['door rated one minute is not unrated', { ...odd, fireRatingMin: 1 }, 'no', { clause: 'b' }],
  ['wall not rated', { ...odd, wallRatingMin: 0 }, 'no', { clause: 'b' }],
  ['ordinary wall', { ...odd, wallKind: 'none' }, 'no', { clause: 'b' }],
  ['smoke partition', { ...odd, wallKind: 'smokePartition' }, 'no', { clause: 'b' }],
  ['wall rating not known', { fireRatingMin: 0, wallKind: 'corridor' }, 'unknown', { clause: 'b' }],
  ['label missing', bare, 'yes', { clause: 'c', does: 'signOff must' }],
  ['altered, label missing', { ...bare, workStatus: 'altered' }, 'yes', { clause: 'c' }],
  ['unrated door in a rated corridor', odd, 'yes', { clause: 'c' }],
  ['a wall rated one minute is rated', { ...odd, wallRatingMin: 1 }, 'yes', { clause: 'c' }],
  [
    'labeled rated door',
    { ...bare, fireLabel: 'seen', wallRatingMin: 60, wallKind: 'corridor' },
    'no',
    { clause: 'c' },
  ],
  ['door rated one minute, label seen', { ...odd, fireRatingMin: 1 }, 'no', { clause: 'c' }],
  ['new rated door has no label yet', { ...bare, workStatus: 'new' }, 'no', { clause: 'c' }],
  ['unrated door, unrated wall, no label', { ...bare, ...unrated }, 'no', { clause: 'c' }],
  ['ordinary wall, label seen', { ...odd, wallKind: 'none' }, 'no', { clause: 'c' }],
  ['smoke partition, label seen', { ...odd, wallKind: 'smokePartition' }, 'no', { clause: 'c' }],
  ['nothing surveyed', {}, 'unknown', { clause: 'c' }],
  ...(['illegible', 'removed'] as const).flatMap((fireLabel): readonly CaseRow[] => [
    ['rated, label not to be read', { ...bare, fireLabel }, 'yes', { clause: 'a' }],
    ['rated, label not to be read', { ...bare, fireLabel }, 'yes', { clause: 'c' }],
    [
      'rated, label not to be read',
      { ...bare, fireLabel },
      'yes',
      { clause: 'd', does: ['fieldLabel', 'fireLabelledHardware'] },
    ],
    ...open.map(
      ([clause, on, does]): CaseRow => [
        'rating not known, label not to be read',
        { ...tenant, fireLabel, wallKind: 'none' },
        'yes',
        { clause, ...on, ...does },
      ],
    ),
  ]),
  ...open.flatMap(([clause, on]): readonly CaseRow[] => [
    ...(
      [
        'corridor',
        'otherPartition',
        'fireBarrier',
        'exitEnclosure',
        'horizontalExit',
        'fireWall',
        'smokeBarrier',
      ] as const
    ).map(
      (wallKind): CaseRow => [
        'no label in a wall that asks for one',
        { ...tenant, fireLabel: 'none', wallKind },
        'yes',
        { clause, ...on },
      ],
    ),
    ['being altered', { ...tenant, workStatus: 'altered' }, 'yes', { clause, ...on }],
    ['shown to be unrated', { ...tenant, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause, ...on }],
    ['label not looked for', without(tenant, 'fireLabel'), 'unknown', { clause, ...on }],
  ]),
  ...open.slice(0, 3).flatMap(([clause]): readonly CaseRow[] => [
    [
      'rating not known, ordinary wall',
      { ...tenant, fireLabel: 'none', wallKind: 'none' },
      'unknown',
      { clause },
    ],
    [
      'rating not known, wall shown to be unrated',
      { ...tenant, fireLabel: 'none', wallRatingMin: 0 },
      'unknown',
      { clause },
    ],
    [
      'rating not known, wall of one minute',
      { ...tenant, fireLabel: 'none', wallRatingMin: 1 },
      'yes',
      { clause },
    ],
    ['new or not: not known', { fireLabel: 'illegible', wallKind: 'corridor' }, 'unknown', { clause }],
    ['being altered', { ...tenant, workStatus: 'altered' }, 'yes', { clause }],
    [
      'new opening, rating not known',
      { ...tenant, workStatus: 'new' },
      clause === 'c' ? 'unknown' : 'no',
      { clause },
    ],
  ]),
  ...open
    .slice(3)
    .map(
      ([clause, on]): CaseRow => [
        'wall of one minute',
        { ...tenant, fireLabel: 'none', wallRatingMin: 1 },
        'yes',
        { clause, ...on },
      ],
    ),
  ...open.slice(3).flatMap(([clause, on]): readonly CaseRow[] => [
    [
      'no label in an ordinary wall',
      { ...tenant, fireLabel: 'none', wallKind: 'none' },
      'no',
      { clause, ...on },
    ],
    [
      'no label in a smoke partition',
      { ...tenant, fireLabel: 'none', wallKind: 'smokePartition' },
      'no',
      { clause, ...on },
    ],
    ['label seen', { ...tenant, fireLabel: 'seen' }, 'no', { clause, ...on }],
    ['wall shown to be unrated', { ...tenant, fireLabel: 'none', wallRatingMin: 0 }, 'no', { clause, ...on }],
    ['new opening', { ...tenant, workStatus: 'new' }, 'no', { clause, ...on }],
  ]),
  ...(['e', 'f', 'g'] as const).map(
    (clause): CaseRow => [
      'the rating is known: other rules speak',
      { ...tenant, fireRatingMin: 20 },
      'no',
      { clause },
    ],
  ),
  ['rated, label missing', bare, 'yes', { clause: 'd' }],
  ['rated, label seen', { ...bare, fireLabel: 'seen' }, 'no', { clause: 'd' }],
  ['new rated door', { ...bare, workStatus: 'new' }, 'no', { clause: 'd' }],
  [
    'wall rated and door not told, no label',
    { ...tenant, wallRatingMin: 60, fireLabel: 'none' },
    'yes',
    { clause: 'd' },
  ],
  ['a lock in the leaf is judged elsewhere', tenant, 'no', { clause: 'e', on: 'mortiseLock/secure/free' }],
  ['a fail-safe strike is clause f', tenant, 'no', { clause: 'e', on: 'strikeMortise/safe/free' }],
  ['a fail-secure strike is clause e', tenant, 'no', { clause: 'f', on: 'strikeMortise/secure/free' }],
  ['a fail-safe lock keeps its latch', tenant, 'no', { clause: 'f', on: 'mortiseLock/safe/free' }],
  ...onEach(
    [
      'boltSolenoid/safe/sensor',
      'glassPatchLock/safe/sensor',
      'glassRailExit/secure/free',
      'narrowStileLatch/secure/free',
      'gateLock/secure/free',
    ],
    'not made with a label',
    tenant,
    'yes',
    'g',
  ),
  ['a magnet beside a latch', tenant, 'no', { clause: 'g', on: 'magnet/safe/sensor' }],
  ['altered, label missing', { ...bare, workStatus: 'altered' }, 'yes', { clause: 'd' }],
);
