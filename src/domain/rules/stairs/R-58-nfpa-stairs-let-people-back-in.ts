import { under } from '../../codes/sections.ts';
import { all, ibc, is, nfpa101, not, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { loneStair, nfpaAlone, selectedReentry } from './conditions.ts';

export const R58 = defineRule({
  id: 'R-58',
  title: 'NFPA 101: a locked stair over four stories opens with the alarm, or has re-entry floors',
  family: 'stairs',
  book: 'nfpa101',
  cites: [under('stairDoorsNfpa')],
  confidence: 'secondary',
  note: 'Health-care, detention and existing-building chapters may excuse more; a reviewer applies them. What selected re-entry asks floor by floor is in R-129.',
  why: 'In a tall stair people must be able to leave onto another floor, by alarm release or at marked floors.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(
        nfpa101(),
        is('egressRole', 'stairEntry'),
        over('stairStories', 'stairLockStoriesNfpa'),
        not(all(not(ibc()), selectedReentry)),
        not(loneStair),
      ),
      of: { release: ['stairReentry'] },
      items: ['stairAlarmRelease'],
      says: 'The building’s fire alarm frees the stair side of every locked door, because the stair serves {stairStories}.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(
        nfpaAlone,
        yes('stairSideToLock'),
        over('stairStories', 'stairLockStoriesNfpa'),
        yes('selectedReentry'),
      ),
      items: ['signReentry'],
      says: 'Signs on the stair side name the re-entry floors and, on the locked ones, the nearest way back in or out each way.',
    },
  ],
});
