import { under } from '../../codes/sections.ts';
import { locksOutside, outsideNotKnownFree } from '../../arrangement/leafLocks.ts';
import type { CandidateMatch } from '../../devices/candidates.ts';
import { all, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { loneStairIbc } from './conditions.ts';

const staysOpen = all(is('egressRole', 'stairEntry'), no('stairSideToLock'));
/** What may hang at a stair door that stays open: a lever worked by hand, or a delayed bar with its trim. */
const freeOnStairSide: CandidateMatch = {
  device: ['mechanicalLock', 'delayedExitDevice'],
  not: { release: ['keyInside'] },
};

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
});
