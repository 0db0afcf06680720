import type { FactValues } from '../../model/fields.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';
import { without } from '../without.ts';

const ward = { occupancyGroup: 'I-2', roomUse: 'patientRoom', latch: 'pushPull', suiteDoor: 'none' } as const;

const suite = { ...ward, roomUse: 'office', suiteDoor: 'perimeter', wallKind: 'none' } as const;

const office = { ...ward, roomUse: 'office', wallKind: 'none' } as const;

/** Any other room on the corridor, whose wall is entered as what it is or as what it is built as. */
const onCorridor = (['corridor', 'smokePartition'] as const).map(
  (wallKind) =>
    ({ ...office, wallKind, doorType: 'pair', inactiveBolts: 'none', wishScheduledUnlock: true }) as const,
);

const hours = { ...ward, wishScheduledUnlock: true } as const;

const strike = 'strikeMortise/safe/free';

const held = 'strikeMortise/secure/free';

/** Every leaf of `suiteEntrance`, for a clause whose own condition the facts given satisfy. */
const suites = (asked: NonNullable<CaseRow[3]>, also: FactValues = {}): readonly CaseRow[] => [
  ['suite recorded in ambulatory care', { ...suite, occupancyGroup: 'B', ...also }, 'yes', asked],
  [
    'inside a suite of ambulatory care',
    { ...suite, suiteDoor: 'inside', occupancyGroup: 'B', ...also },
    'no',
    asked,
  ],
  ['hospital, suite not asked', { ...without(office, 'suiteDoor'), ...also }, 'unknown', asked],
  [
    'office building, suite not asked',
    { ...without(office, 'suiteDoor'), occupancyGroup: 'B', ...also },
    'no',
    asked,
  ],
  ['suite entrance, group not known', { ...without(suite, 'occupancyGroup'), ...also }, 'yes', asked],
];

export const R107Cases = cases(
  ...onEach(
    [
      'magnet/safe/sensor',
      'shearMagnet/safe/sensor',
      'boltSolenoid/safe/sensor',
      'boltMotor/safe/sensor',
      'delayedMagnet/safe/delayed',
      'glassPatchLock/safe/sensor',
    ],
    'patient room, push and pull',
    ward,
    'yes',
    'a',
  ),
  [
    'patient room, roller latch',
    { ...ward, latch: 'roller' },
    'yes',
    { clause: 'a', on: 'magnet/safe/sensor', does: 'prohibit' },
  ],
  [
    'patient room, mortise latch',
    { ...ward, latch: 'mortise' },
    'no',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['suite entrance', suite, 'yes', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['inside a suite', { ...suite, suiteDoor: 'inside' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['office', office, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['latch not known', { roomUse: 'patientRoom' }, 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['a latched lock', ward, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  ['patient room, push and pull', ward, 'yes', { clause: 'b', does: 'modify locksmith' }],
  ['patient room, roller latch', { ...ward, latch: 'roller' }, 'yes', { clause: 'b' }],
  ['patient room, mortise latch', { ...ward, latch: 'mortise' }, 'no', { clause: 'b' }],
  ['suite entrance', suite, 'yes', { clause: 'b' }],
  ['office', office, 'no', { clause: 'b' }],
  ['latch not known', { roomUse: 'patientRoom' }, 'unknown', { clause: 'b' }],
  ['patient room', ward, 'yes', { clause: 'c', on: strike, does: 'prohibit' }],
  ['suite entrance', suite, 'yes', { clause: 'c', on: strike }],
  ['office', office, 'no', { clause: 'c', on: strike }],
  ['room not known', { suiteDoor: 'none' }, 'unknown', { clause: 'c', on: strike }],
  ...onEach(['strikeMortise/secure/free', 'mortiseLock/safe/free'], 'patient room', ward, 'no', 'c'),
  ...onEach(
    [
      'strikeMortise/secure/free',
      'strikeRim/secure/free',
      'latchRetractionMotor/secure/free',
      'latchRetractionSolenoid/secure/free',
    ],
    'patient room, hours',
    hours,
    'yes',
    'e',
  ),
  ...onEach(
    [
      'mortiseLock/secure/free',
      'exitTrim/secure/free',
      'glassRailExit/secure/free',
      'mechanicalLock/none/free',
      'magnet/safe/sensor',
      'boltMotor/secure/sensor',
      'strikeMortise/safe/free',
    ],
    'patient room, hours',
    hours,
    'no',
    'e',
  ),
  ['patient room, no hours', { ...hours, wishScheduledUnlock: false }, 'no', { clause: 'e', on: held }],
  ['hours not asked', ward, 'unknown', { clause: 'e', on: held }],
  [
    'suite entrance',
    { ...suite, wishScheduledUnlock: true },
    'yes',
    { clause: 'e', on: held, does: 'prohibit' },
  ],
  [
    'inside a suite',
    { ...suite, suiteDoor: 'inside', wishScheduledUnlock: true },
    'no',
    { clause: 'e', on: held },
  ],
  ['office', { ...office, wishScheduledUnlock: true }, 'no', { clause: 'e', on: held }],
  [
    'patient pair, manual bolts',
    { ...ward, doorType: 'pair', inactiveBolts: 'manualFlush' },
    'yes',
    { clause: 'd', does: ['automaticFlushBolts'] },
  ],
  ['patient pair, no bolts', { ...ward, doorType: 'pair', inactiveBolts: 'none' }, 'yes', { clause: 'd' }],
  [
    'suite pair, manual bolts',
    { ...suite, doorType: 'pair', inactiveBolts: 'manualFlush' },
    'yes',
    { clause: 'd' },
  ],
  [
    'patient pair, automatic bolts',
    { ...ward, doorType: 'pair', inactiveBolts: 'automaticFlush' },
    'no',
    { clause: 'd' },
  ],
  ['single leaf', { ...ward, doorType: 'single', inactiveBolts: 'manualFlush' }, 'no', { clause: 'd' }],
  [
    'office pair, manual bolts',
    { ...office, doorType: 'pair', inactiveBolts: 'manualFlush' },
    'no',
    { clause: 'd' },
  ],
  ['bolts not known', { ...ward, doorType: 'pair' }, 'unknown', { clause: 'd' }],
  ...suites({ clause: 'a', on: 'magnet/safe/sensor' }),
  ...suites({ clause: 'b' }),
  ...suites({ clause: 'c', on: strike }),
  ...suites({ clause: 'd' }, { doorType: 'pair', inactiveBolts: 'none' }),
  ...suites({ clause: 'e', on: held }, { wishScheduledUnlock: true }),
  ['patient room, push and pull', ward, 'yes', { clause: 'f', does: 'signOff must' }],
  ['patient room, roller latch', { ...ward, latch: 'roller' }, 'yes', { clause: 'f' }],
  ['patient room, mortise latch', { ...ward, latch: 'mortise' }, 'no', { clause: 'f' }],
  ['suite entrance', suite, 'yes', { clause: 'f' }],
  ['office', office, 'no', { clause: 'f' }],
  ['latch not known', { roomUse: 'patientRoom' }, 'unknown', { clause: 'f' }],
  ...suites({ clause: 'f' }),
  ...onCorridor.flatMap((room): readonly CaseRow[] => [
    ['office on the corridor', room, 'yes', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['office on the corridor', room, 'yes', { clause: 'b' }],
    ['office on the corridor', room, 'yes', { clause: 'c', on: strike }],
    ['office on the corridor', room, 'yes', { clause: 'd' }],
    ['office on the corridor', room, 'yes', { clause: 'e', on: held }],
    ['office on the corridor, R-22', room, 'no', { clause: 'f' }],
    ['office building', { ...room, occupancyGroup: 'B' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['office building', { ...room, occupancyGroup: 'B' }, 'no', { clause: 'b' }],
    ['office building', { ...room, occupancyGroup: 'B' }, 'no', { clause: 'c', on: strike }],
    ['office building', { ...room, occupancyGroup: 'B' }, 'no', { clause: 'd' }],
    ['office building', { ...room, occupancyGroup: 'B' }, 'no', { clause: 'e', on: held }],
    ['barrier across the corridor', { ...room, wallKind: 'smokeBarrier' }, 'no', { clause: 'c', on: strike }],
  ]),
  ['wall not known', without(office, 'wallKind'), 'unknown', { clause: 'c', on: strike }],
);
