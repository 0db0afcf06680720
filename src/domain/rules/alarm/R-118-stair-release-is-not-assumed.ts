import { under } from '../../codes/sections.ts';
import { all, ibc, nfpa101, not, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R118 = defineRule({
  id: 'R-118',
  title: 'A stair lock is tied to the alarm only where the code requires it',
  family: 'alarm',
  book: 'ibc',
  cites: [under('stairDoors'), under('stairDoorsNfpa')],
  confidence: 'read',
  note: 'That IBC 2024 adds the alarm is secondary.',
  why: 'Some codes unlock stair doors by a switch, others by the alarm; guessing leaves either people or floors unprotected.',
  clauses: [
    {
      effect: 'caution',
      when: all(
        yes('stairSideToLock'),
        not(ibc({ from: 2024, readTo: 2024 })),
        not(all(nfpa101(), over('stairStories', 'stairLockStoriesNfpa'))),
      ),
      of: { release: ['stairReentry'] },
      says: 'The adopted text requires this stair door to unlock on command, not on alarm: connect the alarm only if the authority wants it.',
    },
  ],
});
