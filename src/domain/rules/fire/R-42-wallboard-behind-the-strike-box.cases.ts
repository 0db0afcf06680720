import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const throat = { ...rated, frameMaterial: 'hollowMetal', wallConstruction: 'gypsum' } as const;

export const R42Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'],
    'steel fire frame in a stud wall',
    throat,
    'yes',
    { does: 'caution' },
  ),
  ['masonry wall', { ...throat, wallConstruction: 'masonry' }, 'no', { on: 'strikeMortise/secure/free' }],
  ['wood frame', { ...throat, frameMaterial: 'wood' }, 'no', { on: 'strikeMortise/secure/free' }],
  ['unrated frame', { ...throat, ...unrated }, 'no', { on: 'strikeMortise/secure/free' }],
  [
    'wall not surveyed',
    { ...rated, frameMaterial: 'hollowMetal' },
    'unknown',
    { on: 'strikeMortise/secure/free' },
  ],
  ['a rim strike has no box in the frame', throat, 'no', { on: 'strikeRim/secure/free' }],
  ['a lock in the leaf', throat, 'no', { on: 'mortiseLock/secure/free' }],
);
