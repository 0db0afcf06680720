import { cases } from '../rule.ts';

export const T02Cases = cases(
  ['labeled door', { fireLabel: 'seen' }, 'yes', { on: 'strikeMortise/safe/free', does: 'prohibit' }],
  ['label painted over', { fireLabel: 'illegible' }, 'yes', { on: 'strikeMortise/safe/free' }],
  ['label removed', { fireLabel: 'removed' }, 'yes', { on: 'strikeMortise/safe/free' }],
  ['no label', { fireLabel: 'none' }, 'no', { on: 'strikeMortise/safe/free' }],
  ['label not looked for', {}, 'no', { on: 'strikeMortise/safe/free' }],
  ['a fail-secure strike may be listed', { fireLabel: 'seen' }, 'no', { on: 'strikeMortise/secure/free' }],
  ['a fail-safe lock keeps its latch', { fireLabel: 'seen' }, 'no', { on: 'mortiseLock/safe/free' }],
);
