import { under } from '../../codes/sections.ts';
import { all, ibc, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B32 = defineRule({
  id: 'B-32',
  title: 'Stair doors locked with no release location',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('stairDoors'), under('highRiseStairs')],
  confidence: 'secondary',
  why: 'People in a smoky stair must be let back in, all doors at once, from one known place.',
  clauses: [
    {
      effect: 'finding',
      field: 'stairReleasePoint',
      severity: 'refuse',
      when: all(ibc(), yes('stairSideToLock'), no('singleExitStair'), is('stairReleasePoint', 'none')),
      says: 'The stair side is to be locked and there is no place where the doors can be released together; name it, or leave the stair side open.',
    },
  ],
});
