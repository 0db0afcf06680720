import { text, under } from '../../codes/sections.ts';
import { all, any, atMost, is, isKnown, not, over, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { type CaseRow, cases, defineRule, type Does } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

/** A new opening has no label yet: it is ordered with the door. */
const inPlace = is('workStatus', 'existing', 'altered');
const unread = is('fireLabel', 'illegible', 'removed', 'none');
const labelMissing = all(yes('fireRated'), unread, inPlace);
const saidUnrated = all(
  atMost('fireRatingMin', 0),
  over('wallRatingMin', 0),
  not(is('wallKind', 'none', 'smokePartition')),
);
/** Walls that ask for a fire door unless somebody shows a rating of zero. */
const askingWall = is(
  'wallKind',
  'corridor',
  'otherPartition',
  'fireBarrier',
  'exitEnclosure',
  'horizontalExit',
  'fireWall',
  'smokeBarrier',
);
const wallShownUnrated = all(isKnown('wallRatingMin'), atMost('wallRatingMin', 0));
/**
 * Nobody told the minutes, and no label tells them: it counts as a fire door because a label is or was on it, or
 * because the wall asks for one. What speaks here because a fact is missing ends when the rating is answered.
 */
const takenAsRated = all(
  not(isKnown('fireRatingMin')),
  inPlace,
  any(
    is('fireLabel', 'illegible', 'removed'),
    all(is('fireLabel', 'none'), askingWall, not(wallShownUnrated)),
  ),
);
const toBeLabeled = any(labelMissing, takenAsRated);
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

export const R53 = defineRule({
  id: 'R-53',
  title: 'A missing label does not make a door in a rated wall ordinary',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '5.1', 'Inspection of labels'), under('openingProtectives')],
  confidence: 'secondary',
  note: 'Rated exterior walls count too, though far from a lot line their openings may be free of rating.',
  why: 'Labels get painted over or fall off; the wall still requires a fire door.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'fireLabel',
      severity: 'warn',
      when: toBeLabeled,
      says: 'No legible fire label where one belongs: it is treated as a fire door, and the label or its record must be found.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: saidUnrated,
      says: 'The door is entered as unrated but stands in a wall rated {wallRatingMin}: it is treated as a fire door until someone shows otherwise.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: any(toBeLabeled, saidUnrated),
      says: 'Wall and label do not agree here: a reviewer settles the rating of this door.',
    },
    {
      key: 'd',
      effect: 'require',
      when: toBeLabeled,
      items: ['fieldLabel', 'fireLabelledHardware'],
      says: 'A labeling agency inspects leaf and frame and relabels or rejects them; hardware is ordered listed for fire doors until then.',
    },
    {
      key: 'e',
      effect: 'require',
      when: takenAsRated,
      of: { family: ['strike'], failMode: ['secure'] },
      items: ['fireListedStrike'],
      says: 'While the rating is open the strike is ordered with a fire listing.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: takenAsRated,
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'A label is missing where one belongs, so the door counts as a fire door, and a fail-safe strike lets go when power fails.',
    },
    {
      key: 'g',
      effect: 'prohibit',
      when: takenAsRated,
      of: {
        device: [
          'boltSolenoid',
          'boltMotor',
          'glassPatchLock',
          'glassRailExit',
          'narrowStileLatch',
          'gateLock',
        ],
      },
      says: 'A label is missing where one belongs, so the door counts as a fire door, and this device is not made with a label for fire doors.',
    },
  ],
  cases: cases(
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
      [
        'wall shown to be unrated',
        { ...tenant, fireLabel: 'none', wallRatingMin: 0 },
        'no',
        { clause, ...on },
      ],
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
  ),
});
