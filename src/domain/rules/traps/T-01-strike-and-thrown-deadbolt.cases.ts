import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T01Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeCylindrical/safe/free'],
    'deadbolt only',
    { latch: 'deadboltOnly' },
    'yes',
    'a',
  ),
  [
    'hookbolt',
    { latch: 'hookbolt' },
    'yes',
    { clause: 'a', on: 'strikeCylindrical/secure/free', does: 'prohibit' },
  ],
  ['a latch', { latch: 'mortise' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'an electrified lock draws its own bolt',
    { latch: 'deadboltOnly' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  [
    'mortise lock with deadbolt',
    { latch: 'mortiseDeadbolt' },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/free', does: 'modify locksmith' },
  ],
  ['mortise latch alone', { latch: 'mortise' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ['mortise lock, deadbolt not surveyed', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  [
    'an electrified mortise lock replaces both',
    { latch: 'mortiseDeadbolt' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
);
