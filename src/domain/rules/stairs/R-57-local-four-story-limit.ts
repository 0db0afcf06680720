import { text, under } from '../../codes/sections.ts';
import { all, ibc, no, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const between = all(
  ibc(),
  yes('stairSideToLock'),
  yes('cityKeepsFourStoryLimit'),
  over('stairStories', 'stairLockStoriesLocal'),
  no('highRise'),
);

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
});
