import { cases } from '../rule.ts';

export const R52Cases = cases(
  ['smoke door, strike', { smokeSeals: true }, 'yes', { on: 'strikeMortise/secure/free', does: 'caution' }],
  ['smoke door, magnet', { smokeSeals: true }, 'yes', { on: 'magnet/safe/sensor' }],
  ['smoke door, delayed magnet', { smokeSeals: true }, 'yes', { on: 'delayedMagnet/safe/delayed' }],
  ['smoke door, delayed bar', { smokeSeals: true }, 'no', { on: 'delayedExitDevice/safe/delayed' }],
  ['smoke door, lock in the leaf', { smokeSeals: true }, 'no', { on: 'mortiseLock/secure/free' }],
  ['smoke door, latch retraction', { smokeSeals: true }, 'no', { on: 'latchRetractionMotor/secure/free' }],
  ['no seals', { smokeSeals: false }, 'no', { on: 'strikeMortise/secure/free' }],
  ['seals not surveyed', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
);
