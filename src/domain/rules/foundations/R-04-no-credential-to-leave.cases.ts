import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const toLeave = [
  'magnet/safe/credentialOut',
  'mortiseLock/secure/credentialOut',
  'cylindricalLock/safe/credentialOut',
];

export const R04Cases = cases(
  ...onEach(toLeave, 'room door, card to leave', { egressRole: 'exitAccess' }, 'yes', {
    clause: 'a',
    does: 'prohibit',
  }),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'magnet/safe/credentialOut' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/credentialOut' }],
  ...onEach(
    ['mortiseLock/secure/free', 'magnet/safe/sensor', 'magnet/safe/controlled'],
    'no credential needed',
    { egressRole: 'exitAccess', readerSides: 'both' },
    'no',
    'a',
  ),
  ...onEach(
    ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry', 'strikeRim/secure/free'],
    'readers on both sides, mechanical exit',
    { egressRole: 'exitAccess', readerSides: 'both' },
    'yes',
    { clause: 'b', does: 'signOff should' },
  ),
  [
    'reader outside only',
    { egressRole: 'exitAccess', readerSides: 'secure' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'inside reader only records',
    { egressRole: 'exitAccess', readerSides: 'recordOut' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'cabinet with two readers',
    { egressRole: 'noOccupiedSpace', readerSides: 'both' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'readers not known',
    { egressRole: 'exitAccess' },
    'unknown',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'a magnet is not free',
    { egressRole: 'exitAccess', readerSides: 'both' },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'card to leave is clause a',
    { egressRole: 'exitAccess', readerSides: 'both' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/credentialOut' },
  ],
);
