import { cases } from '../rule.ts';

export const N07Cases = cases(
  ['lockdown, battery lock', { wishLockdown: true }, 'yes', { on: 'batteryLock/asIs/free', does: 'caution' }],
  ['lockdown, mechanical lock', { wishLockdown: true }, 'yes', { on: 'mechanicalLock/none/free' }],
  ['lockdown, wired lock', { wishLockdown: true }, 'no', { on: 'mortiseLock/secure/free' }],
  ['no lockdown', { wishLockdown: false }, 'no', { on: 'batteryLock/asIs/free' }],
  ['not asked', {}, 'unknown', { on: 'batteryLock/asIs/free' }],
);
