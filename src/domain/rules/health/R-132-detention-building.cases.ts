import { cases } from '../rule.ts';

const cell = { occupancyGroup: 'I-3', roomUse: 'detention', wishControlledEgress: false } as const;

const office = { ...cell, roomUse: 'office' } as const;

const on = 'detentionLock/none/attended';

export const R132Cases = cases(
  ['cell', cell, 'yes', { clause: 'a', does: 'refer' }],
  [
    'corridor that keeps residents in',
    { ...office, roomUse: 'corridor', wishControlledEgress: true },
    'yes',
    { clause: 'a' },
  ],
  ['staff office', office, 'no', { clause: 'a' }],
  ['holding room elsewhere, R-103', { ...cell, occupancyGroup: 'B' }, 'no', { clause: 'a' }],
  ['group not known', { roomUse: 'detention' }, 'unknown', { clause: 'a' }],
  ['staff office', office, 'yes', { clause: 'b', does: 'signOff must' }],
  ['courthouse office', { ...office, occupancyGroup: 'B' }, 'no', { clause: 'b' }],
  ['group not known', {}, 'unknown', { clause: 'b' }],
  [
    'cell',
    cell,
    'yes',
    { clause: 'c', on, does: ['detentionRelease', 'keyCylinder', 'ahjApproval', 'acceptanceTest'] },
  ],
  ['prison corridor', office, 'yes', { clause: 'c', on }],
  ['holding room elsewhere', { ...cell, occupancyGroup: 'B' }, 'yes', { clause: 'c', on }],
  ['office elsewhere', { ...office, occupancyGroup: 'B' }, 'no', { clause: 'c', on }],
  ['nothing known', {}, 'unknown', { clause: 'c', on }],
  ['a free lever in a prison', office, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
);
