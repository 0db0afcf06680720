import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';

const free = 'mortiseLock/secure/free';

export const R125Cases = cases(
  [
    'one controlled door on the way',
    { controlledDoorsOnPath: 1 },
    'yes',
    { clause: 'a', on: 'delayedMagnet/safe/delayed', does: 'signOff must' },
  ],
  ['none', { controlledDoorsOnPath: 0 }, 'no', { clause: 'a', on: 'delayedMagnet/safe/delayed' }],
  ['number not known', {}, 'unknown', { clause: 'a', on: 'delayedMagnet/safe/delayed' }],
  ...(
    [
      { occupancyGroup: 'I-1.1', roomUse: 'corridor' },
      { occupancyGroup: 'R-4', roomUse: 'corridor' },
      { occupancyGroup: 'B', roomUse: 'patientRoom' },
      { occupancyGroup: 'B', roomUse: 'patientUnit' },
      { occupancyGroup: 'B', roomUse: 'memoryCare' },
    ] as const
  ).map(
    (facts): CaseRow => [
      `number not known, ${facts.roomUse} in ${facts.occupancyGroup}`,
      facts,
      'unknown',
      { clause: 'a', on: 'delayedMagnet/safe/delayed' },
    ],
  ),
  [
    'apartment house, where nobody is kept in',
    { occupancyGroup: 'R-2', roomUse: 'corridor' },
    'no',
    { clause: 'a', on: 'delayedMagnet/safe/delayed' },
  ],
  ['a free lever', { controlledDoorsOnPath: 1 }, 'no', { clause: 'a', on: free }],
  ...onEach(
    ['magnet/safe/controlled', 'mortiseLock/secure/clinical'],
    'one delayed door on the way',
    { delayedDoorsOnPath: 1 },
    'yes',
    { clause: 'b', does: 'signOff must' },
  ),
  ['none', { delayedDoorsOnPath: 0 }, 'no', { clause: 'b', on: 'magnet/safe/controlled' }],
  ['number not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/controlled' }],
  ['a free lever', { delayedDoorsOnPath: 1 }, 'no', { clause: 'b', on: free }],
);
