import type { VerdictWord } from '../../logic/verdict.ts';
import type { FactValues } from '../../model/fields.ts';
import type { CaseRow, RuleCase } from '../rule.ts';

/** A stair door whose stair side is to be locked. */
export const locked: FactValues = { egressRole: 'stairEntry', stairLockWanted: 'stairSide' };
export const bothLocked: FactValues = { egressRole: 'stairEntry', stairLockWanted: 'both' };
export const open: FactValues = { egressRole: 'stairEntry', stairLockWanted: 'none' };
export const nfpaOnly = { ibc: null, nfpa101: 2021 } as const;
export const bothCodes = { ibc: 2021, nfpa101: 2021 } as const;
export const noCode = { ibc: null, nfpa101: null } as const;

const excepted = ['B', 'F-1', 'F-2', 'M', 'S-1', 'S-2', 'R-2'] as const;

/** The single-exit-stair exception of the IBC, leaf by leaf: `lone` is the answer where it applies. */
export function loneStairCases(
  lone: VerdictWord,
  otherwise: VerdictWord,
  options: Pick<RuleCase, 'clause' | 'on' | 'basis'>,
  also: FactValues = {},
): readonly CaseRow[] {
  return [
    ...excepted.map(
      (occupancyGroup): CaseRow => [
        `single exit stair, ${occupancyGroup}`,
        { ...locked, ...also, singleExitStair: true, occupancyGroup },
        lone,
        options,
      ],
    ),
    [
      'single exit stair, restaurant',
      { ...locked, ...also, singleExitStair: true, occupancyGroup: 'A-2' },
      otherwise,
      options,
    ],
    [
      'offices with two stairs',
      { ...locked, ...also, singleExitStair: false, occupancyGroup: 'B' },
      otherwise,
      options,
    ],
    ['offices, number of stairs not asked', { ...locked, ...also, occupancyGroup: 'B' }, otherwise, options],
  ];
}
