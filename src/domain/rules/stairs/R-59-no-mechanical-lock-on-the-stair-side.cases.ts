import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';
import { locked, loneStairCases, nfpaOnly, open } from './given.ts';

const floor = { egressRole: 'stairEntry', stairLockWanted: 'floorSide' } as const;

export const R59Cases = cases(
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
    ['single exit stair, group not known', { ...locked, singleExitStair: true }, 'unknown', { clause: 'b' }],
  ]),
);
