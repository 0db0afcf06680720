import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const R07Cases = cases(
  ...onEach(
    ['mortiseLock/secure/free', 'strikeRim/secure/free', 'batteryLock/asIs/free'],
    'reader outside, lever inside',
    { egressRole: 'exitAccess', readerSides: 'secure' },
    'yes',
    { does: 'permit' },
  ),
  [
    'readers on both sides',
    { egressRole: 'exitAccess', readerSides: 'both' },
    'no',
    { on: 'mortiseLock/secure/free' },
  ],
  [
    'cabinet',
    { egressRole: 'noOccupiedSpace', readerSides: 'secure' },
    'no',
    { on: 'mortiseLock/secure/free' },
  ],
  ['readers not known', { egressRole: 'exitAccess' }, 'unknown', { on: 'mortiseLock/secure/free' }],
  ...onEach(
    ['magnet/safe/sensor', 'exitTrim/safe/stairReentry', 'mechanicalLock/none/keyInside'],
    'not simply free',
    { egressRole: 'exitAccess', readerSides: 'secure' },
    'no',
  ),
);
