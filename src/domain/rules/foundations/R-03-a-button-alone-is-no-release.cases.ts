import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const R03Cases = cases(
  ...onEach(
    ['magnet/safe/buttonOnly', 'boltSolenoid/safe/buttonOnly', 'glassPatchLock/secure/buttonOnly'],
    'room door with a button only',
    { egressRole: 'exitAccess' },
    'yes',
    { does: 'prohibit' },
  ),
  [
    'cabinet that nobody can enter',
    { egressRole: 'noOccupiedSpace' },
    'no',
    { on: 'magnet/safe/buttonOnly' },
  ],
  ['role not known', {}, 'unknown', { on: 'magnet/safe/buttonOnly' }],
  ...onEach(
    ['magnet/safe/sensor', 'magnet/safe/doorSwitch', 'magnet/safe/none'],
    'not a button alone',
    { egressRole: 'exitAccess' },
    'no',
  ),
);
