import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T07Cases = cases(
  ...onEach(
    ['mortiseLock/secure/free', 'exitTrim/secure/free'],
    'controlled door',
    { readerSides: 'secure' },
    'yes',
    { does: 'caution' },
  ),
  ['no reader', { readerSides: 'none' }, 'no', { on: 'mortiseLock/secure/free' }],
  ['reader not settled', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
  ['a strike stays in the frame', { readerSides: 'secure' }, 'no', { on: 'strikeMortise/secure/free' }],
);
