import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { loneStairIbc } from './conditions.ts';

const lockedStair = all(ibc(), yes('stairSideToLock'), not(loneStairIbc));

export const R55 = defineRule({
  id: 'R-55',
  title: 'Locked stair doors are released together from one place',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('highRiseStairs')],
  confidence: 'read',
  why: 'People in the stair cannot know which floor is safe; one switch where the fire department arrives unlocks them all.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(ibc(), is('egressRole', 'stairEntry'), not(loneStairIbc)),
      of: { release: ['stairReentry'] },
      items: ['stairReleaseTogether'],
      says: 'A signal from the fire command center, or where there is none from one point inside the main entrance, unlocks every locked stair door at once and leaves them latched.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'stairReleasePoint',
      severity: 'warn',
      when: all(lockedStair, is('stairReleasePoint', 'none')),
      says: 'The stair doors cannot be released together from anywhere; until they can, this stair side has to stay open.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'stairReleasePoint',
      severity: 'warn',
      when: all(
        lockedStair,
        is('stairReleasePoint', 'mainEntrance'),
        any(yes('fireCommandCenter'), yes('highRise')),
      ),
      says: 'This building has, or must have, a fire command center: the stair doors are released from there and not only from the main entrance.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: lockedStair,
      says: 'A stair side is to be locked: a reviewer confirms the place of the release and that every locked door of the stair answers to it.',
    },
    {
      // While nobody named the place this waits for it, so the place is asked before the door is settled.
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: all(lockedStair, is('stairReleasePoint', 'none')),
      says: 'A stair side is to be locked and nothing releases the stair doors together: a reviewer settles that before anything is ordered.',
    },
  ],
});
