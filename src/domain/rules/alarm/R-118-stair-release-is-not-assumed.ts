import { under } from '../../codes/sections.ts';
import { all, ibc, nfpa101, not, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const locked = { egressRole: 'stairEntry', stairLockWanted: 'stairSide', stairStories: 5 } as const;
const on = 'exitTrim/safe/stairReentry';

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
  cases: cases(
    ['IBC 2021', locked, 'yes', { on, does: 'caution' }],
    ['IBC 2018', locked, 'yes', { on, basis: { ibc: 2018 } }],
    ['IBC 2024 asks for the alarm', locked, 'no', { on, basis: { ibc: 2024 } }],
    ['NFPA 101 beside it, five stories', locked, 'no', { on, basis: { nfpa101: 2021 } }],
    [
      'NFPA 101 beside it, four stories',
      { ...locked, stairStories: 4 },
      'yes',
      { on, basis: { nfpa101: 2021 } },
    ],
    ['stair side open', { ...locked, stairLockWanted: 'none' }, 'no', { on }],
    ['wish not asked', { egressRole: 'stairEntry' }, 'unknown', { on }],
    ['an ordinary lock is not meant', locked, 'no', { on: 'exitTrim/safe/free' }],
  ),
});
