import { cases } from '../rule.ts';
import { locked, nfpaOnly, open } from './given.ts';

const five = { ...locked, cityKeepsFourStoryLimit: true, stairStories: 5, highRise: false } as const;

const on = 'exitTrim/safe/stairReentry';

export const R57Cases = cases(
  ['five stories, limit kept', five, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['four stories, limit kept', { ...five, stairStories: 4 }, 'no', { clause: 'a', on }],
  ['high-rise has its own rule', { ...five, stairStories: 20, highRise: true }, 'no', { clause: 'a', on }],
  ['limit not kept', { ...five, cityKeepsFourStoryLimit: false }, 'no', { clause: 'a', on }],
  ['stair side open', { ...five, ...open }, 'no', { clause: 'a', on }],
  ['NFPA 101 alone', five, 'no', { clause: 'a', on, basis: nfpaOnly }],
  [
    'local text not looked up',
    { ...locked, stairStories: 5, highRise: false },
    'unknown',
    { clause: 'a', on },
  ],
  ['other locks are refused by R-54', five, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['five stories, limit kept', five, 'yes', { clause: 'b', does: 'signOff must' }],
  ['four stories, limit kept', { ...five, stairStories: 4 }, 'no', { clause: 'b' }],
  ['high-rise has its own rule', { ...five, stairStories: 20, highRise: true }, 'no', { clause: 'b' }],
  ['limit not kept', { ...five, cityKeepsFourStoryLimit: false }, 'no', { clause: 'b' }],
  ['stair side open', { ...five, ...open }, 'no', { clause: 'b' }],
  ['NFPA 101 alone', five, 'no', { clause: 'b', basis: nfpaOnly }],
  [
    'stories not known',
    { ...locked, cityKeepsFourStoryLimit: true, highRise: false },
    'unknown',
    { clause: 'b' },
  ],
);
