import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const on = 'mortiseLock/secure/free';

export const R98Cases = cases(
  ['server room', { roomUse: 'serverRoom' }, 'yes', { clause: 'a', on, does: 'permit' }],
  ['modular data center', { roomUse: 'modularDataCenter' }, 'yes', { clause: 'a', on }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'a', on }],
  ['room not known', {}, 'unknown', { clause: 'a', on }],
  ...onEach(
    ['mortiseLock/secure/credentialOut', 'magnet/safe/sensor'],
    'no free lock',
    { roomUse: 'serverRoom' },
    'no',
    'a',
  ),
  [
    'readers on both sides',
    { roomUse: 'serverRoom', readerSides: 'both' },
    'yes',
    { clause: 'b', does: 'caution' },
  ],
  ['data center, both sides', { roomUse: 'modularDataCenter', readerSides: 'both' }, 'yes', { clause: 'b' }],
  ['inside reader records', { roomUse: 'serverRoom', readerSides: 'recordOut' }, 'no', { clause: 'b' }],
  ['office, both sides', { roomUse: 'office', readerSides: 'both' }, 'no', { clause: 'b' }],
  ['reader not known', { roomUse: 'serverRoom' }, 'unknown', { clause: 'b' }],
);
