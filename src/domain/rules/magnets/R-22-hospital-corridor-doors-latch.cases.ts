import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';
import { oneOfEachMagnet } from './given.ts';

const ward = {
  occupancyGroup: 'I-2',
  roomUse: 'patientRoom',
  suiteDoor: 'none',
  wallKind: 'none',
  latch: 'roller',
} as const;

const other = { ...ward, roomUse: 'office' } as const;

const plain = { ...other, egressRole: 'exitAccess' } as const;

const on = 'magnet/safe/sensor';

export const R22Cases = cases(
  ...onEach(oneOfEachMagnet, 'patient room with a roller latch', ward, 'yes', 'a'),
  ['patient room, push/pull', { ...ward, latch: 'pushPull' }, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['patient room that latches', { ...ward, latch: 'bored' }, 'no', { clause: 'a', on }],
  ['suite entrance', { ...other, suiteDoor: 'perimeter' }, 'yes', { clause: 'a', on }],
  ['inside the suite', { ...other, suiteDoor: 'inside' }, 'no', { clause: 'a', on }],
  ['office on the corridor', { ...other, wallKind: 'corridor' }, 'yes', { clause: 'a', on }],
  [
    'office on the corridor, a smoke partition',
    { ...other, wallKind: 'smokePartition' },
    'yes',
    { clause: 'a', on },
  ],
  ['office elsewhere', other, 'no', { clause: 'a', on }],
  ['clinic in group B', { ...ward, occupancyGroup: 'B' }, 'no', { clause: 'a', on }],
  ['latch not known', { occupancyGroup: 'I-2', roomUse: 'patientRoom' }, 'unknown', { clause: 'a', on }],
  ...onEach(['mortiseLock/safe/free', 'delayedExitDevice/safe/delayed'], 'no magnet', ward, 'no', 'a'),
  ...(['pushPull', 'roller'] as const).flatMap((latch): readonly CaseRow[] => [
    [
      'office on the corridor',
      { ...other, wallKind: 'corridor', latch },
      'yes',
      { clause: 'b', does: 'signOff must' },
    ],
    [
      'corridor as a smoke partition',
      { ...other, wallKind: 'smokePartition', latch },
      'yes',
      { clause: 'b' },
    ],
    ['ordinary wall', { ...plain, latch }, 'yes', { clause: 'c', does: 'signOff should' }],
  ]),
  ['corridor door that latches', { ...other, wallKind: 'corridor', latch: 'mortise' }, 'no', { clause: 'b' }],
  ['patient room, R-107', { ...ward, wallKind: 'corridor' }, 'no', { clause: 'b' }],
  [
    'suite entrance, R-107',
    { ...other, wallKind: 'corridor', suiteDoor: 'perimeter' },
    'no',
    { clause: 'b' },
  ],
  ['office building', { ...other, wallKind: 'corridor', occupancyGroup: 'B' }, 'no', { clause: 'b' }],
  ['wall not known', without(other, 'wallKind'), 'unknown', { clause: 'b' }],
  ['ordinary wall, latch', { ...plain, latch: 'mortise' }, 'no', { clause: 'c' }],
  ['corridor wall', { ...plain, wallKind: 'corridor' }, 'no', { clause: 'c' }],
  ['exit door', { ...plain, egressRole: 'exteriorExit' }, 'no', { clause: 'c' }],
  ['patient room, R-107', { ...plain, roomUse: 'patientRoom' }, 'no', { clause: 'c' }],
  ['suite entrance, R-107', { ...plain, suiteDoor: 'perimeter' }, 'no', { clause: 'c' }],
  ['inside the suite', { ...plain, suiteDoor: 'inside' }, 'no', { clause: 'c' }],
  ['office building', { ...plain, occupancyGroup: 'B' }, 'no', { clause: 'c' }],
  ['suite not asked', without(plain, 'suiteDoor'), 'unknown', { clause: 'c' }],
);
