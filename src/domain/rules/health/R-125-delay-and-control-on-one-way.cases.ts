import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

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
