import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { loneStairIbc } from './conditions.ts';
import { bothLocked, locked, loneStairCases, nfpaOnly, open } from './given.ts';

const lockedStair = all(ibc(), yes('stairSideToLock'), not(loneStairIbc));
const atEntrance = { ...locked, stairReleasePoint: 'mainEntrance' } as const;

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
  ],
  cases: cases(
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
    [
      'wish not asked',
      { egressRole: 'stairEntry' },
      'yes',
      { clause: 'a', on: 'exitTrim/safe/stairReentry' },
    ],
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
  ),
});
