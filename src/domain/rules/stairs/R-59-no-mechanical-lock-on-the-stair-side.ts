import { under } from '../../codes/sections.ts';
import { all, ibc, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, defineRule } from '../rule.ts';
import { loneStairIbc } from './conditions.ts';
import { locked, loneStairCases, nfpaOnly, open } from './given.ts';

export const R59 = defineRule({
  id: 'R-59',
  title: 'No mechanical or battery lock on a locked stair side',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors')],
  confidence: 'secondary',
  note: 'The single-stair exception was read; its groups are from general knowledge.',
  why: 'Nobody can release a key lock or a battery lock from the lobby while people stand in the stair.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(ibc(), yes('stairSideToLock'), not(loneStairIbc)),
      of: { wired: false },
      says: 'Without a wire nothing can release the stair side on command, so it may not be locked this way.',
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
        ['mechanicalLock/none/free', 'batteryLock/asIs/free', 'mechanicalLock/none/keyInside'],
        'stair side to be locked',
        locked,
        'yes',
        { clause: 'a', does: 'prohibit' },
      ),
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
