import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const ward = {
  occupancyGroup: 'I-2',
  egressRole: 'exitAccess',
  bedsMoved: true,
  clearWidthIn: 41.4375,
} as const;

/** A leaf nobody has measured the opening of. */
const leaf = { ...without(ward, 'clearWidthIn'), doorType: 'single', leafWidthIn: 41.4375 } as const;
const wider = { ...leaf, leafWidthIn: 41.5 } as const;

const [a, b, c] = [{ clause: 'a' }, { clause: 'b' }, { clause: 'c' }] as const;

export const R168Cases = cases(
  ['just under', ward, 'yes', { ...a, does: 'warn clearWidthIn' }],
  ['41-1/2 in', { ...ward, clearWidthIn: 41.5 }, 'no', a],
  ...([2018, 2024] as const).flatMap((ibc): readonly CaseRow[] => [
    ['just under', ward, 'yes', { ...a, basis: { ibc } }],
    ['41-1/2 in', { ...ward, clearWidthIn: 41.5 }, 'no', { ...a, basis: { ibc } }],
  ]),
  ['no beds', { ...ward, bedsMoved: false }, 'no', a],
  ['office building', { ...ward, occupancyGroup: 'B' }, 'no', a],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', a],
  ['beds or not: not asked', without(ward, 'bedsMoved'), 'unknown', a],
  ['not measured', without(ward, 'clearWidthIn'), 'unknown', a],
  ['leaf narrower than the opening must be', leaf, 'yes', { ...b, does: 'warn leafWidthIn' }],
  ['balanced leaf', { ...leaf, doorType: 'balanced' }, 'yes', b],
  ['leaf of 41-1/2 in', wider, 'no', b],
  ['opening measured', { ...leaf, clearWidthIn: 40 }, 'no', b],
  ['pair', { ...leaf, doorType: 'pair' }, 'no', b],
  ['no beds', { ...leaf, bedsMoved: false }, 'no', b],
  ['office building', { ...leaf, occupancyGroup: 'B' }, 'no', b],
  ['cabinet', { ...leaf, egressRole: 'noOccupiedSpace' }, 'no', b],
  ['leaf not measured', without(leaf, 'leafWidthIn'), 'unknown', b],
  ['leaf of 41-1/2 in', wider, 'yes', { ...c, does: 'caution' }],
  ['leaf just under 44 in', { ...leaf, leafWidthIn: 43.9375 }, 'yes', c],
  ['balanced leaf', { ...wider, doorType: 'balanced' }, 'yes', c],
  ['leaf of 44 in', { ...leaf, leafWidthIn: 44 }, 'no', c],
  ['narrower leaf', leaf, 'no', c],
  ['opening measured', { ...wider, clearWidthIn: 42 }, 'no', c],
  ['pair', { ...wider, doorType: 'pair' }, 'no', c],
  ['no beds', { ...wider, bedsMoved: false }, 'no', c],
  ['office building', { ...wider, occupancyGroup: 'B' }, 'no', c],
  ['cabinet', { ...wider, egressRole: 'noOccupiedSpace' }, 'no', c],
  ['leaf not measured', without(leaf, 'leafWidthIn'), 'unknown', c],
);
