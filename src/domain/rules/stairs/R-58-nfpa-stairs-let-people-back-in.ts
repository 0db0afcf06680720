import { under } from '../../codes/sections.ts';
import { all, ibc, is, nfpa101, not, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { loneStair, nfpaAlone, selectedReentry } from './conditions.ts';
import { bothCodes, locked, nfpaOnly, noCode, open } from './given.ts';

const five = { ...locked, stairStories: 5 } as const;
const a = { clause: 'a', on: 'exitTrim/safe/stairReentry', basis: nfpaOnly } as const;
const b = { clause: 'b', basis: nfpaOnly } as const;
const chosen = { ...five, selectedReentry: true } as const;

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
  cases: cases(
    ['five stories', five, 'yes', { ...a, does: ['stairAlarmRelease'] }],
    ['four stories', { ...five, stairStories: 4 }, 'no', a],
    ['five stories, both codes adopted', five, 'yes', { ...a, basis: bothCodes }],
    ['five stories, IBC alone', five, 'no', { ...a, basis: {} }],
    ['put in by hand where both sides are to stay open', { ...open, stairStories: 5 }, 'yes', a],
    ['office door', { egressRole: 'exitAccess', stairStories: 5 }, 'no', a],
    ['selected re-entry planned', chosen, 'no', a],
    ['selected re-entry planned, but the IBC governs too', chosen, 'yes', { ...a, basis: bothCodes }],
    ['no selected re-entry', { ...five, selectedReentry: false }, 'yes', a],
    ['single exit stair', { ...five, singleExitStair: true }, 'no', a],
    ['two stairs', { ...five, singleExitStair: false }, 'yes', a],
    ['stories not known', locked, 'unknown', a],
    ['an ordinary lock is not meant', five, 'no', { ...a, on: 'exitTrim/secure/free' }],
    ['selected re-entry planned', chosen, 'yes', { ...b, does: ['signReentry'] }],
    ['no selected re-entry', { ...five, selectedReentry: false }, 'no', b],
    ['four stories', { ...chosen, stairStories: 4 }, 'no', b],
    ['stair side open', { ...chosen, ...open }, 'no', b],
    ['both codes adopted', chosen, 'no', { ...b, basis: bothCodes }],
    ['IBC alone', chosen, 'no', { ...b, basis: {} }],
    ['no code chosen', chosen, 'no', { ...b, basis: noCode }],
    ['not asked', five, 'unknown', b],
  ),
});
