import { cases } from '../rule.ts';

export const T31Cases = cases(
  ['high security', { securityNeed: 'high' }, 'yes', { on: 'magnet/safe/sensor', does: 'caution' }],
  ['critical security', { securityNeed: 'critical' }, 'yes', { on: 'magnet/safe/sensor' }],
  ['low need', { securityNeed: 'low' }, 'no', { on: 'magnet/safe/sensor' }],
  ['need not asked', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ['no sensor', { securityNeed: 'high' }, 'no', { on: 'magnet/safe/doorSwitch' }],
);
