import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B58 = defineRule({
  id: 'B-58',
  title: 'Stair doors released from a location the building does not have',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('stairDoors')],
  confidence: 'project',
  why: 'The doors are released from the fire command center where there is one, and only without one from inside the main entrance.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'stairReleasePoint',
      severity: 'refuse',
      when: all(is('stairReleasePoint', 'fireCommandCenter'), no('fireCommandCenter')),
      says: 'The stair doors are to be released from a fire command center, and the building has none; name another place or check the building.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'stairReleasePoint',
      severity: 'refuse',
      when: all(
        ibc(),
        yes('stairSideToLock'),
        is('stairReleasePoint', 'mainEntrance'),
        yes('fireCommandCenter'),
      ),
      says: 'The building has a fire command center, and the stair doors are to be released at the main entrance; the release belongs in the center.',
    },
  ],
});
