import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const altered = { ...rated, workStatus: 'altered' } as const;

export const R40Cases = cases(
  ...onEach(
    ['strikeRim/secure/free', 'exitTrim/secure/free', 'batteryLock/asIs/free'],
    'rated door being altered',
    altered,
    'yes',
    'a',
  ),
  [
    'existing rated door',
    { ...rated, workStatus: 'existing' },
    'yes',
    { clause: 'a', on: 'strikeRim/secure/free', does: 'permit' },
  ],
  ['new opening', { ...rated, workStatus: 'new' }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['unrated door', { ...unrated, workStatus: 'altered' }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['new or existing not known', rated, 'unknown', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['a recessed strike is not waved through', altered, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['a magnet is judged by its own rules', altered, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ...onEach(
    [
      'strikeRim/secure/free',
      'exitTrim/secure/free',
      'batteryLock/asIs/free',
      'magnet/safe/sensor',
      'delayedMagnet/safe/delayed',
    ],
    'rated door being altered',
    altered,
    'yes',
    'b',
  ),
  [
    'existing rated door',
    { ...rated, workStatus: 'existing' },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor', does: ['holeRecord'] },
  ],
  ['new opening', { ...rated, workStatus: 'new' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['unrated door', { ...unrated, workStatus: 'altered' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['new or existing not known', rated, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  [
    'a lock in its old preparation drills nothing',
    altered,
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
);
