import { cases } from '../rule.ts';

export const R144Cases = cases(
  [
    'key lock at an egress court',
    { egressRole: 'egressCourt' },
    'yes',
    { clause: 'a', on: 'mechanicalLock/none/keyInside', does: 'prohibit' },
  ],
  [
    'key gate lock at an egress court',
    { egressRole: 'egressCourt' },
    'yes',
    { clause: 'a', on: 'gateLock/secure/keyInside' },
  ],
  [
    'free lever at an egress court',
    { egressRole: 'egressCourt' },
    'no',
    { clause: 'a', on: 'mechanicalLock/none/free' },
  ],
  [
    'terrace that leads back inside',
    { egressRole: 'exteriorSpace' },
    'no',
    { clause: 'a', on: 'mechanicalLock/none/keyInside' },
  ],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'mechanicalLock/none/keyInside' }],
  ['egress court', { egressRole: 'egressCourt' }, 'yes', { clause: 'b', does: 'signOff must' }],
  ['terrace', { egressRole: 'exteriorSpace' }, 'no', { clause: 'b' }],
  ['role not known', {}, 'unknown', { clause: 'b' }],
);
