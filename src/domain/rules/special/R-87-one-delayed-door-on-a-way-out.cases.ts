import { cases } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

const second = { occupancyGroup: 'B', delayedDoorsOnPath: 1 } as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R87Cases = cases(
  ['second delayed door of an office', second, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['the only clause', { ...second, delayedDoorsOnPath: 0 }, 'no', { clause: 'a', on }],
  ['hospital, see R-88', { ...second, occupancyGroup: 'I-2' }, 'no', { clause: 'a', on }],
  ['number not known', { occupancyGroup: 'B' }, 'unknown', { clause: 'a', on }],
  ['NFPA 101 alone', second, 'no', { clause: 'a', on, basis: alone }],
  ['both books', second, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  ['no book chosen', second, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['a free bar on the way', second, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['NFPA 101 alone, second door', second, 'yes', { clause: 'b', on, basis: alone, does: 'signOff must' }],
  [
    'NFPA 101 alone, the only clause',
    { ...second, delayedDoorsOnPath: 0 },
    'no',
    { clause: 'b', on, basis: alone },
  ],
  ['both books: refused already', second, 'no', { clause: 'b', on, basis: { nfpa101: 2021 } }],
  ['no book', second, 'no', { clause: 'b', on, basis: { ibc: null } }],
  ['number not known', {}, 'unknown', { clause: 'b', on, basis: alone }],
  ['a free bar on the way', second, 'no', { clause: 'b', on: 'exitTrim/secure/free', basis: alone }],
);
