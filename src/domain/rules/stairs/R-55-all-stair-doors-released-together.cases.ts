import { cases } from '../rule.ts';
import { bothLocked, locked, loneStairCases, nfpaOnly, open } from './given.ts';

const atEntrance = { ...locked, stairReleasePoint: 'mainEntrance' } as const;

export const R55Cases = cases(
  [
    'stair side to be locked',
    locked,
    'yes',
    { clause: 'a', on: 'exitTrim/safe/stairReentry', does: ['stairReleaseTogether'] },
  ],
  ['both sides to be locked', bothLocked, 'yes', { clause: 'a', on: 'mortiseLock/safe/stairReentry' }],
  [
    'put in by hand where both sides are to stay open',
    open,
    'yes',
    { clause: 'a', on: 'exitTrim/safe/stairReentry' },
  ],
  ['NFPA 101 alone', locked, 'no', { clause: 'a', on: 'exitTrim/safe/stairReentry', basis: nfpaOnly }],
  ['wish not asked', { egressRole: 'stairEntry' }, 'yes', { clause: 'a', on: 'exitTrim/safe/stairReentry' }],
  ['office door', { egressRole: 'exitAccess' }, 'no', { clause: 'a', on: 'exitTrim/safe/stairReentry' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'exitTrim/safe/stairReentry' }],
  ['an ordinary lock is not meant', locked, 'no', { clause: 'a', on: 'exitTrim/safe/free' }],
  ...loneStairCases('no', 'yes', { clause: 'a', on: 'exitTrim/safe/stairReentry' }),
  [
    'nowhere to release from',
    { ...locked, stairReleasePoint: 'none' },
    'yes',
    { clause: 'b', does: 'warn stairReleasePoint' },
  ],
  ['released at the entrance', atEntrance, 'no', { clause: 'b' }],
  [
    'released at the command center',
    { ...locked, stairReleasePoint: 'fireCommandCenter' },
    'no',
    { clause: 'b' },
  ],
  ['stair side open', { ...open, stairReleasePoint: 'none' }, 'no', { clause: 'b' }],
  ['NFPA 101 alone', { ...locked, stairReleasePoint: 'none' }, 'no', { clause: 'b', basis: nfpaOnly }],
  ['not asked', locked, 'unknown', { clause: 'b' }],
  ...loneStairCases('no', 'yes', { clause: 'b' }, { stairReleasePoint: 'none' }),
  [
    'entrance, though a command center is there',
    { ...atEntrance, fireCommandCenter: true, highRise: false },
    'yes',
    { clause: 'c', does: 'warn stairReleasePoint' },
  ],
  [
    'entrance, high-rise',
    { ...atEntrance, fireCommandCenter: false, highRise: true },
    'yes',
    { clause: 'c' },
  ],
  [
    'entrance, low building without command center',
    { ...atEntrance, fireCommandCenter: false, highRise: false },
    'no',
    { clause: 'c' },
  ],
  [
    'command center used',
    { ...locked, stairReleasePoint: 'fireCommandCenter', fireCommandCenter: true, highRise: true },
    'no',
    { clause: 'c' },
  ],
  [
    'stair side open',
    { ...open, stairReleasePoint: 'mainEntrance', fireCommandCenter: true },
    'no',
    { clause: 'c' },
  ],
  ['NFPA 101 alone', { ...atEntrance, fireCommandCenter: true }, 'no', { clause: 'c', basis: nfpaOnly }],
  ['command center not asked', atEntrance, 'unknown', { clause: 'c' }],
  ...loneStairCases(
    'no',
    'yes',
    { clause: 'c' },
    { stairReleasePoint: 'mainEntrance', fireCommandCenter: true },
  ),
  ['stair side to be locked', locked, 'yes', { clause: 'd', does: 'signOff must' }],
  ['stair side open', open, 'no', { clause: 'd' }],
  ['NFPA 101 alone: asked in R-54', locked, 'no', { clause: 'd', basis: nfpaOnly }],
  ['wish not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'd' }],
  ...loneStairCases('no', 'yes', { clause: 'd' }),
);
