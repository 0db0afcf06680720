import { cases } from '../rule.ts';

export const T30Cases = cases(
  [
    'controlled door',
    { readerSides: 'secure' },
    'yes',
    { on: 'mortiseLock/secure/free', does: ['requestToExit'] },
  ],
  ['stair door', { readerSides: 'both' }, 'yes', { on: 'mortiseLock/safe/stairReentry' }],
  ['no reader', { readerSides: 'none' }, 'no', { on: 'mortiseLock/secure/free' }],
  ['reader not settled', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
  ['a magnet’s sensor does it', { readerSides: 'secure' }, 'no', { on: 'magnet/safe/sensor' }],
  ['a battery lock reports by itself', { readerSides: 'secure' }, 'no', { on: 'batteryLock/asIs/free' }],
);
