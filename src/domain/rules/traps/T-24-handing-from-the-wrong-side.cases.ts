import { cases } from '../rule.ts';

export const T24Cases = cases(
  [
    'swings out, left plain',
    { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LH' },
    'yes',
    { does: 'warn handing' },
  ],
  ['swings out, right plain', { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'RH' }, 'yes'],
  ['swings out, left reverse', { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LHR' }, 'no'],
  ['swings in, left reverse', { egressRole: 'exitAccess', swingsWithEgress: false, handing: 'LHR' }, 'yes'],
  ['swings in, right reverse', { egressRole: 'exitAccess', swingsWithEgress: false, handing: 'RHR' }, 'yes'],
  ['swings in, right plain', { egressRole: 'exitAccess', swingsWithEgress: false, handing: 'RH' }, 'no'],
  [
    'a stair door is locked from either side',
    { egressRole: 'stairEntry', swingsWithEgress: true, handing: 'LH' },
    'no',
  ],
  [
    'people leave an elevator lobby away from the reader',
    { egressRole: 'elevatorLobby', swingsWithEgress: true, handing: 'LH' },
    'no',
  ],
  ['discharge of a stair', { egressRole: 'stairDischarge', swingsWithEgress: true, handing: 'RH' }, 'yes'],
  ['role not known', { swingsWithEgress: true, handing: 'LH' }, 'unknown'],
  ['hand not surveyed', { egressRole: 'exteriorExit', swingsWithEgress: true }, 'unknown'],
);
