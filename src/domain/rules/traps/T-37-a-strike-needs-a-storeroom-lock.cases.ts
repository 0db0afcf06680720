import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T37Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeRim/secure/free'],
    'passage lever',
    { lockFunction: 'passage' },
    'yes',
    { clause: 'a', does: 'modify locksmith' },
  ),
  ['storeroom lock', { lockFunction: 'storeroom' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['function not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'an electrified lock brings its own lever',
    { lockFunction: 'passage' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ...onEach(
    ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'],
    'passage lock',
    { lockFunction: 'passage' },
    'yes',
    'b',
  ),
  [
    'classroom lock',
    { lockFunction: 'classroom' },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/free', does: ['storeroomLockset'] },
  ],
  ['office lock', { lockFunction: 'office' }, 'yes', { clause: 'b', on: 'strikeMortise/secure/free' }],
  [
    'storeroom lock stays',
    { lockFunction: 'storeroom' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  ['not surveyed', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  [
    'an exit device has trim, not a lockset',
    { lockFunction: 'passage' },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  ...onEach(
    ['strikeMortise/secure/free', 'strikeRim/safe/free'],
    'classroom function',
    { lockFunction: 'classroom' },
    'yes',
    'c',
  ),
  [
    'office function',
    { lockFunction: 'office' },
    'yes',
    { clause: 'c', on: 'strikeMortise/secure/free', does: 'caution' },
  ],
  [
    'storeroom function',
    { lockFunction: 'storeroom' },
    'no',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  ['function unknown', {}, 'unknown', { clause: 'c', on: 'strikeMortise/secure/free' }],
  [
    'a magnet cares for no lever',
    { lockFunction: 'classroom' },
    'no',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
);
