import { cases } from '../rule.ts';
import { bothCodes, locked, nfpaOnly, noCode, open } from './given.ts';

const five = { ...locked, stairStories: 5 } as const;

const a = { clause: 'a', on: 'exitTrim/safe/stairReentry', basis: nfpaOnly } as const;

const b = { clause: 'b', basis: nfpaOnly } as const;

const chosen = { ...five, selectedReentry: true } as const;

export const R58Cases = cases(
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
);
