import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
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
  ),
});
