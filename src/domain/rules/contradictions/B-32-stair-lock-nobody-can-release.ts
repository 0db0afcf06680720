import { under } from '../../codes/sections.ts';
import { all, ibc, is, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'no release point',
      {
        egressRole: 'stairEntry',
        stairLockWanted: 'stairSide',
        singleExitStair: false,
        stairReleasePoint: 'none',
      },
      'yes',
      { does: 'refuse stairReleasePoint' },
    ],
    [
      'no release point',
      {
        egressRole: 'stairEntry',
        stairLockWanted: 'both',
        singleExitStair: false,
        stairReleasePoint: 'none',
      },
      'yes',
    ],
    [
      'main entrance',
      {
        egressRole: 'stairEntry',
        stairLockWanted: 'stairSide',
        singleExitStair: false,
        stairReleasePoint: 'mainEntrance',
      },
      'no',
    ],
    [
      'stays open',
      {
        egressRole: 'stairEntry',
        stairLockWanted: 'none',
        singleExitStair: false,
        stairReleasePoint: 'none',
      },
      'no',
    ],
    [
      'single exit stair',
      {
        egressRole: 'stairEntry',
        stairLockWanted: 'stairSide',
        singleExitStair: true,
        stairReleasePoint: 'none',
      },
      'no',
    ],
    [
      'NFPA 101 alone',
      {
        egressRole: 'stairEntry',
        stairLockWanted: 'stairSide',
        singleExitStair: false,
        stairReleasePoint: 'none',
      },
      'no',
      { basis: { ibc: null, nfpa101: 2021 } },
    ],
    [
      'release point not known',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false },
      'unknown',
    ],
  ),
});
