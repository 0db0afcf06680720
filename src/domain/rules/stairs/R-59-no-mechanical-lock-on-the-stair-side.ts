import { under } from '../../codes/sections.ts';
import { locksOutside, outsideNotKnownFree } from '../../arrangement/leafLocks.ts';
import type { CandidateMatch } from '../../devices/candidates.ts';
import { all, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { loneStairIbc } from './conditions.ts';
import { locked, loneStairCases, nfpaOnly, open } from './given.ts';

const staysOpen = all(is('egressRole', 'stairEntry'), no('stairSideToLock'));
/** What may hang at a stair door that stays open: a lever worked by hand, or a delayed bar with its trim. */
const freeOnStairSide: CandidateMatch = {
  device: ['mechanicalLock', 'delayedExitDevice'],
  not: { release: ['keyInside'] },
};
const floor = { egressRole: 'stairEntry', stairLockWanted: 'floorSide' } as const;

export const R59 = defineRule({
  id: 'R-59',
  title: 'No mechanical or battery lock on a locked stair side',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors')],
  confidence: 'secondary',
  note: 'The single-stair exception was read; its groups are from general knowledge.',
  why: 'No one can release a key lock or a battery lock from the lobby while people are in the stair.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(ibc(), yes('stairSideToLock'), not(loneStairIbc)),
      of: { wired: false, not: { family: ['battery'] } },
      says: 'Without a wire nothing can release the stair side on command, so it may not be locked this way.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(ibc(), is('egressRole', 'stairEntry'), not(loneStairIbc)),
      of: { family: ['battery'] },
      says: 'A battery lock holds the stair side whatever is wanted, and no wire reaches it to release it.',
    },
    {
      key: 'd',
      effect: 'require',
      items: ['passageFunction'],
      when: all(staysOpen, outsideNotKnownFree),
      of: freeOnStairSide,
      says: 'The stair side stays open, so the lever or trim toward the stair is free at all hours: a passage function, whatever hangs there now.',
    },
    {
      key: 'e',
      effect: 'finding',
      field: 'lockFunction',
      severity: 'warn',
      when: all(staysOpen, locksOutside),
      says: 'The stair side is to stay open, yet the lock on the leaf locks it: people in the stair cannot come back until its function is changed.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: all(staysOpen, locksOutside),
      of: freeOnStairSide,
      says: 'The lock on the leaf locks the stair side today; a reviewer confirms that it was changed to passage.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(ibc(), yes('stairSideToLock'), loneStairIbc),
      says: 'The locked stair side rests on the exception for the only exit stair of a tenant space or unit; a reviewer confirms that it fits this building.',
    },
  ],
  cases: cases(
    ...doing({ b: 'signOff must' }, [
      ...onEach(
        ['mechanicalLock/none/free', 'mechanicalLock/none/keyInside'],
        'stair side to be locked',
        locked,
        'yes',
        { clause: 'a', does: 'prohibit' },
      ),
      ...onEach(
        ['batteryLock/asIs/free', 'batteryLock/asIs/clinical'],
        'stair side to be locked',
        locked,
        'yes',
        {
          clause: 'c',
          does: 'prohibit',
        },
      ),
      ['battery lock, both sides to stay open', open, 'yes', { clause: 'c', on: 'batteryLock/asIs/free' }],
      [
        'battery lock, wish not asked',
        { egressRole: 'stairEntry' },
        'yes',
        { clause: 'c', on: 'batteryLock/asIs/free' },
      ],
      [
        'battery lock, office',
        { egressRole: 'exitAccess' },
        'no',
        { clause: 'c', on: 'batteryLock/asIs/free' },
      ],
      ['battery lock, role not known', {}, 'unknown', { clause: 'c', on: 'batteryLock/asIs/free' }],
      [
        'battery lock, NFPA 101 alone',
        locked,
        'no',
        { clause: 'c', on: 'batteryLock/asIs/free', basis: nfpaOnly },
      ],
      ['a lever lock is clause a', locked, 'no', { clause: 'c', on: 'mechanicalLock/none/free' }],
      ...loneStairCases('no', 'yes', { clause: 'c', on: 'batteryLock/asIs/free' }),
      ...onEach(
        ['mechanicalLock/none/free', 'delayedExitDevice/safe/delayed'],
        'both sides stay open',
        open,
        'yes',
        {
          clause: 'd',
          does: ['passageFunction'],
        },
      ),
      ['floor side only', floor, 'yes', { clause: 'd', on: 'mechanicalLock/none/free' }],
      [
        'both sides open, NFPA 101 alone',
        open,
        'yes',
        { clause: 'd', on: 'mechanicalLock/none/free', basis: nfpaOnly },
      ],
      [
        'both sides open, passage',
        { ...open, lockFunction: 'passage' },
        'no',
        { clause: 'd', on: 'mechanicalLock/none/free' },
      ],
      ['stair side to be locked', locked, 'no', { clause: 'd', on: 'mechanicalLock/none/free' }],
      [
        'wish not asked',
        { egressRole: 'stairEntry' },
        'unknown',
        { clause: 'd', on: 'mechanicalLock/none/free' },
      ],
      ['a wired lock is not meant', open, 'no', { clause: 'd', on: 'mortiseLock/secure/free' }],
      ...(['e', 'f'] as const).flatMap((clause): readonly CaseRow[] => {
        const at = clause === 'e' ? { clause } : { clause, on: 'mechanicalLock/none/free' };
        return [
          ...(['storeroom', 'classroom', 'office', 'none'] as const).map(
            (lockFunction): CaseRow => [
              `both sides open, ${lockFunction} lock`,
              { ...open, lockFunction },
              'yes',
              { ...at, does: clause === 'e' ? 'warn lockFunction' : 'signOff must' },
            ],
          ),
          ['floor side only, storeroom lock', { ...floor, lockFunction: 'storeroom' }, 'yes', at],
          ['both sides open, passage', { ...open, lockFunction: 'passage' }, 'no', at],
          ['both sides open, function not surveyed', open, 'unknown', at],
          ['stair side to be locked, storeroom lock', { ...locked, lockFunction: 'storeroom' }, 'no', at],
        ];
      }),
      ['a wired lock is judged by R-54', locked, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
      ['stair side open', open, 'no', { clause: 'a', on: 'mechanicalLock/none/free' }],
      ['NFPA 101 alone', locked, 'no', { clause: 'a', on: 'mechanicalLock/none/free', basis: nfpaOnly }],
      [
        'wish not asked',
        { egressRole: 'stairEntry' },
        'unknown',
        { clause: 'a', on: 'mechanicalLock/none/free' },
      ],
      ...loneStairCases('no', 'yes', { clause: 'a', on: 'mechanicalLock/none/free' }),
      ...loneStairCases('yes', 'no', { clause: 'b' }),
      [
        'single exit stair, stair side open',
        { ...open, singleExitStair: true, occupancyGroup: 'B' },
        'no',
        { clause: 'b' },
      ],
      [
        'single exit stair, NFPA 101 alone',
        { ...locked, singleExitStair: true, occupancyGroup: 'B' },
        'no',
        { clause: 'b', basis: nfpaOnly },
      ],
      [
        'single exit stair, group not known',
        { ...locked, singleExitStair: true },
        'unknown',
        { clause: 'b' },
      ],
    ]),
  ),
});
