import { cases } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const R81Cases = cases(
  ['hazardous storage, H-3', { occupancyGroup: 'H-3' }, 'yes', { on, does: 'prohibit' }],
  ['delayed magnet in H-5', { occupancyGroup: 'H-5' }, 'yes', { on: 'delayedMagnet/safe/delayed' }],
  ['warehouse, S-1', { occupancyGroup: 'S-1' }, 'no', { on }],
  ['the free bar is not meant', { occupancyGroup: 'H-3' }, 'no', { on: 'exitTrim/secure/free' }],
  ['group not known', {}, 'unknown', { on }],
);
