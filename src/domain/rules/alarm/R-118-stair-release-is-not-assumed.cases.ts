import { cases } from '../rule.ts';

const locked = { egressRole: 'stairEntry', stairLockWanted: 'stairSide', stairStories: 5 } as const;

const on = 'exitTrim/safe/stairReentry';

export const R118Cases = cases(
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
);
