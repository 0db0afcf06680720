import { cases } from '../rule.ts';

export const B58Cases = cases(
  [
    'no center',
    { stairReleasePoint: 'fireCommandCenter', fireCommandCenter: false },
    'yes',
    { clause: 'a', does: 'refuse stairReleasePoint' },
  ],
  [
    'center there',
    { stairReleasePoint: 'fireCommandCenter', fireCommandCenter: true },
    'no',
    { clause: 'a' },
  ],
  ['main entrance', { stairReleasePoint: 'mainEntrance', fireCommandCenter: false }, 'no', { clause: 'a' }],
  ['center not surveyed', { stairReleasePoint: 'fireCommandCenter' }, 'unknown', { clause: 'a' }],
  [
    'main entrance beside a center',
    {
      stairReleasePoint: 'mainEntrance',
      fireCommandCenter: true,
      egressRole: 'stairEntry',
      stairLockWanted: 'stairSide',
    },
    'yes',
    { clause: 'b', does: 'refuse stairReleasePoint' },
  ],
  [
    'no center',
    {
      stairReleasePoint: 'mainEntrance',
      fireCommandCenter: false,
      egressRole: 'stairEntry',
      stairLockWanted: 'stairSide',
    },
    'no',
    { clause: 'b' },
  ],
  [
    'released from the center',
    {
      stairReleasePoint: 'fireCommandCenter',
      fireCommandCenter: true,
      egressRole: 'stairEntry',
      stairLockWanted: 'stairSide',
    },
    'no',
    { clause: 'b' },
  ],
  [
    'nothing to lock',
    {
      stairReleasePoint: 'mainEntrance',
      fireCommandCenter: true,
      egressRole: 'stairEntry',
      stairLockWanted: 'none',
    },
    'no',
    { clause: 'b' },
  ],
  [
    'IBC not adopted',
    {
      stairReleasePoint: 'mainEntrance',
      fireCommandCenter: true,
      egressRole: 'stairEntry',
      stairLockWanted: 'stairSide',
    },
    'no',
    { clause: 'b', basis: { ibc: null, nfpa101: 2021 } },
  ],
  [
    'center not surveyed',
    { stairReleasePoint: 'mainEntrance', egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'unknown',
    { clause: 'b' },
  ],
);
