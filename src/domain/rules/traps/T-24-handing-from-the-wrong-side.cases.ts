import { cases } from '../rule.ts';

export const T24Cases = cases(
  [
    'swings out, left plain',
    { doorType: 'single', egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LH' },
    'yes',
    { does: 'warn handing' },
  ],
  [
    'swings out, right plain',
    { doorType: 'single', egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'RH' },
    'yes',
  ],
  [
    'swings out, left reverse',
    { doorType: 'single', egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LHR' },
    'no',
  ],
  [
    'swings in, left reverse',
    { doorType: 'single', egressRole: 'exitAccess', swingsWithEgress: false, handing: 'LHR' },
    'yes',
  ],
  [
    'swings in, right reverse',
    { doorType: 'single', egressRole: 'exitAccess', swingsWithEgress: false, handing: 'RHR' },
    'yes',
  ],
  [
    'swings in, right plain',
    { doorType: 'single', egressRole: 'exitAccess', swingsWithEgress: false, handing: 'RH' },
    'no',
  ],
  [
    'a stair door is locked from either side',
    { doorType: 'single', egressRole: 'stairEntry', swingsWithEgress: true, handing: 'LH' },
    'no',
  ],
  [
    'people leave an elevator lobby away from the reader',
    { doorType: 'single', egressRole: 'elevatorLobby', swingsWithEgress: true, handing: 'LH' },
    'no',
  ],
  [
    'discharge of a stair',
    { doorType: 'single', egressRole: 'stairDischarge', swingsWithEgress: true, handing: 'RH' },
    'yes',
  ],
  ['role not known', { doorType: 'single', swingsWithEgress: true, handing: 'LH' }, 'unknown'],
  [
    'a leaf that slides has no hand',
    { doorType: 'slidingManual', egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LH' },
    'no',
  ],
  [
    'door type not surveyed',
    { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LH' },
    'unknown',
  ],
  [
    'hand not surveyed',
    { doorType: 'single', egressRole: 'exteriorExit', swingsWithEgress: true },
    'unknown',
  ],
);
