import { text, under } from '../../codes/sections.ts';
import { all, ibc, no, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { locked, nfpaOnly, open } from './given.ts';

const between = all(
  ibc(),
  yes('stairSideToLock'),
  yes('cityKeepsFourStoryLimit'),
  over('stairStories', 'stairLockStoriesLocal'),
  no('highRise'),
);
const five = { ...locked, cityKeepsFourStoryLimit: true, stairStories: 5, highRise: false } as const;
const on = 'exitTrim/safe/stairReentry';

export const R57 = defineRule({
  id: 'R-57',
  title: 'Where the old limit still applies: no locked stair over four stories',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), text('ibc', '1010.1.9.11 of 2015', 'Stairway doors')],
  confidence: 'secondary',
  note: 'The old text was read. Between four stories and a high-rise it is read both ways; refusing is the strict reading, and a reviewer may lift it. IBC 2018 and later have no such limit.',
  why: 'Older texts let only low stairs and high-rise stairs be locked and say nothing that helps in between.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: between,
      of: { release: ['stairReentry'] },
      says: 'The local code keeps the four-story limit and this stair serves {stairStories} without being in a high-rise: its stair side stays open.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: between,
      says: 'Only a reviewer, with the authority’s word, may lift the local story limit for this stair.',
    },
  ],
  cases: cases(
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
  ),
});
