import { cases } from '../rule.ts';

export const R159Cases = cases(
  [
    'exit device',
    { latch: 'rimExit', panicPresent: true, egressRole: 'exteriorExit' },
    'yes',
    { clause: 'a', basis: { nfpa101: 2021 }, does: ['yearlyInspection'] },
  ],
  [
    'stair door',
    { latch: 'bored', panicPresent: false, egressRole: 'stairEntry' },
    'yes',
    { clause: 'a', basis: { nfpa101: 2021 } },
  ],
  [
    'lever on a room',
    { latch: 'bored', panicPresent: false, egressRole: 'exitAccess' },
    'no',
    { clause: 'a', basis: { nfpa101: 2021 } },
  ],
  ['IBC alone', { latch: 'rimExit', panicPresent: true, egressRole: 'stairEntry' }, 'no', { clause: 'a' }],
  ['latch not seen', { egressRole: 'exitAccess' }, 'unknown', { clause: 'a', basis: { nfpa101: 2021 } }],
  [
    'electric release',
    { egressRole: 'exitAccess' },
    'yes',
    { clause: 'b', on: 'delayedMagnet/safe/delayed', basis: { nfpa101: 2021 }, does: ['yearlyInspection'] },
  ],
  [
    'electric release',
    { egressRole: 'exitAccess' },
    'yes',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
  ],
  [
    'electric release',
    { egressRole: 'exitAccess' },
    'yes',
    { clause: 'b', on: 'magnet/safe/doorSwitch', basis: { nfpa101: 2021 } },
  ],
  [
    'free lever',
    { egressRole: 'exitAccess' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free', basis: { nfpa101: 2021 } },
  ],
  [
    'cabinet',
    { egressRole: 'noOccupiedSpace' },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
  ],
  ['IBC alone', { egressRole: 'exitAccess' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } }],
  ['fire door', { fireRatingMin: 20 }, 'yes', { clause: 'c', does: ['yearlyInspection'] }],
  ['no fire door', { fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'c' }],
  ['rating not known', {}, 'unknown', { clause: 'c' }],
);
