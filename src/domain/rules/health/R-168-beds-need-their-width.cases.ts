import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const ward = {
  occupancyGroup: 'I-2',
  egressRole: 'exitAccess',
  bedsMoved: true,
  clearWidthIn: 41.4375,
} as const;

export const R168Cases = cases(
  ['just under', ward, 'yes', { does: 'warn clearWidthIn' }],
  ['41-1/2 in', { ...ward, clearWidthIn: 41.5 }, 'no'],
  ...([2018, 2024] as const).flatMap((ibc): readonly CaseRow[] => [
    ['just under', ward, 'yes', { basis: { ibc } }],
    ['41-1/2 in', { ...ward, clearWidthIn: 41.5 }, 'no', { basis: { ibc } }],
  ]),
  ['no beds', { ...ward, bedsMoved: false }, 'no'],
  ['office building', { ...ward, occupancyGroup: 'B' }, 'no'],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no'],
  ['beds or not: not asked', without(ward, 'bedsMoved'), 'unknown'],
  ['not measured', without(ward, 'clearWidthIn'), 'unknown'],
);
