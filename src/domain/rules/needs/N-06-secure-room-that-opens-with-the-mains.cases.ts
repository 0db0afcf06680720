import { cases } from '../rule.ts';

export const N06Cases = cases(
  [
    'critical room, magnet',
    { securityNeed: 'critical' },
    'yes',
    { on: 'magnet/safe/sensor', does: 'caution' },
  ],
  ['high need, fail-safe lock', { securityNeed: 'high' }, 'yes', { on: 'mortiseLock/safe/free' }],
  ['medium need', { securityNeed: 'medium' }, 'no', { on: 'magnet/safe/sensor' }],
  ['fail secure stays locked', { securityNeed: 'critical' }, 'no', { on: 'mortiseLock/secure/free' }],
  ['need not known', {}, 'unknown', { on: 'magnet/safe/sensor' }],
);
