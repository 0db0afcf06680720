import { cases } from '../rule.ts';

export const B32Cases = cases(
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
);
