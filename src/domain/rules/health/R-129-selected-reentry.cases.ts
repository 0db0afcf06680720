import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';

const door = { egressRole: 'stairEntry', selectedReentry: true } as const;

const both = { ibc: 2021, nfpa101: 2021 } as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

function around(clause: string, basis: typeof both | typeof alone): readonly CaseRow[] {
  return [
    ['selected re-entry', door, 'yes', { clause, basis }],
    ['every door re-enters', { ...door, selectedReentry: false }, 'no', { clause, basis }],
    ['discharge door', { ...door, egressRole: 'stairDischarge' }, 'no', { clause, basis }],
    ['IBC only', door, 'no', { clause }],
    ['not asked', { egressRole: 'stairEntry' }, 'unknown', { clause, basis }],
  ];
}

export const R129Cases = cases(
  ...doing({ a: ['signReentry'], b: 'signOff must', c: 'caution' }, [
    ...around('a', alone),
    ...around('b', alone),
    ...around('c', both),
    ['NFPA 101 alone', door, 'no', { clause: 'c', basis: alone }],
  ]),
);
