import { under } from '../../codes/sections.ts';
import type { CandidateMatch } from '../../devices/candidates.ts';
import { all, any, atMost, ibc, is, nfpa101, no, not, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { loneStair, loneStairIbc, nfpaAlone, selectedReentry } from './conditions.ts';

const stairEntry = is('egressRole', 'stairEntry');
/** Freed on command, or locked on the floor side only: the trim of a delayed bar stays free. */
const releasedOrDelayedBar: CandidateMatch = {
  device: ['mortiseLock', 'cylindricalLock', 'exitTrim', 'detentionLock', 'delayedExitDevice'],
  release: ['stairReentry', 'attended', 'delayed'],
};

export const R54 = defineRule({
  id: 'R-54',
  title: 'A stair side may be locked only by a lock released on command that stays latched',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('stairDoorsNfpa'), under('highRiseStairs')],
  confidence: 'secondary',
  note: 'The release on command was read. That the lock fails safe is text from IBC 2024 on and this schedule’s default before. Groups of the single-stair exception are from general knowledge.',
  why: 'People driven back by smoke must be able to leave the stair again, and the stair door must not lose its latch for it.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(ibc(), stairEntry, not(loneStairIbc)),
      of: { wired: true, not: releasedOrDelayedBar },
      says: 'Whatever is wished for, this lock holds the stair side. That may be locked only by a fail-safe lock or trim that is released on command and stays latched; this one is not.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(
        nfpaAlone,
        stairEntry,
        over('stairStories', 'stairLockStoriesNfpa'),
        not(selectedReentry),
        not(loneStair),
      ),
      of: {
        family: ['strike', 'magnet', 'bolt', 'lock', 'exitDevice', 'battery', 'delayed'],
        not: releasedOrDelayedBar,
      },
      says: 'The stair serves {stairStories}, too many for a stair side that nothing releases: it takes a lock that is released and stays latched.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(nfpaAlone, yes('stairSideToLock'), atMost('stairStories', 'stairLockStoriesNfpa')),
      of: { release: ['free'], keepsLatch: true },
      says: 'The stair serves {stairStories}: under NFPA 101 any lock may hold its stair side, as long as the way into the stair stays free and the door stays latched.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: no('stairSideToLock'),
      of: { release: ['stairReentry'] },
      says: 'The stair side of this door is not to be locked, so a lock with stair release has nothing to release here.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: all(not(ibc()), yes('stairSideToLock')),
      says: 'A stair side is to be locked: a reviewer confirms how people get back out of the stair.',
    },
    {
      key: 'f',
      effect: 'finding',
      field: 'stairLockWanted',
      severity: 'refuse',
      when: all(stairEntry, is('stairLockWanted', 'none'), yes('wantsReader')),
      says: 'A reader is wanted at this stair door, yet both sides are to stay open: a reader locks the stair side, so one of the two answers is wrong.',
    },
    {
      key: 'g',
      effect: 'finding',
      field: 'stairLockWanted',
      severity: 'refuse',
      when: all(
        stairEntry,
        is('stairLockWanted', 'floorSide'),
        yes('wantsReader'),
        no('wishDelayedEgress'),
        no('wishControlledEgress'),
      ),
      says: 'A reader is wanted while only entry to the stair is to be locked. A reader on the floor makes people ask for their exit, and one in the stair locks the stair side: one of the two answers is wrong, or a delay is meant.',
    },
    {
      key: 'h',
      effect: 'prohibit',
      when: all(any(ibc(), nfpa101()), yes('stairSideToLock')),
      of: { device: ['delayedExitDevice'] },
      says: 'The stair side is to be locked, and a delayed bar with a locked trim is released by no command; its trim has to stay free.',
    },
  ],
});
