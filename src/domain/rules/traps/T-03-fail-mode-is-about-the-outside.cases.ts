import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T03Cases = cases(
  ...onEach(
    ['mortiseLock/secure/free', 'exitTrim/secure/free'],
    'egress door',
    { egressRole: 'exitAccess' },
    'yes',
    { does: 'permit' },
  ),
  ['no egress to speak of', { egressRole: 'noOccupiedSpace' }, 'no', { on: 'mortiseLock/secure/free' }],
  ['role not known', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
  ['fail safe is not in doubt', { egressRole: 'exitAccess' }, 'no', { on: 'mortiseLock/safe/free' }],
  [
    'a clinical lock is another matter',
    { egressRole: 'exitAccess' },
    'no',
    { on: 'mortiseLock/secure/clinical' },
  ],
  [
    'a fail-secure bolt holds people in',
    { egressRole: 'exitAccess' },
    'no',
    { on: 'boltMotor/secure/sensor' },
  ],
  [
    'a strike depends on the lockset with it',
    { egressRole: 'exitAccess' },
    'no',
    { on: 'strikeMortise/secure/free' },
  ],
);
