import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const latched = [
  'strikeMortise/secure/free',
  'mortiseLock/secure/free',
  'narrowStileLatch/secure/free',
  'gateLock/secure/free',
  'batteryLock/asIs/free',
  'mechanicalLock/none/free',
];

export const F09Cases = cases(
  [
    'outside door, strike',
    { exterior: true },
    'yes',
    { clause: 'a', on: 'strikeRim/secure/free', does: ['weatherRated'] },
  ],
  ['inside door', { exterior: false }, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['mechanical lock has no wire', { exterior: true }, 'no', { clause: 'a', on: 'mechanicalLock/none/free' }],
  ...onEach(latched, 'swings out, left', { doorType: 'single', exterior: true, handing: 'LHR' }, 'yes', 'b'),
  [
    'swings out, right',
    { doorType: 'single', exterior: true, handing: 'RHR' },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/free', does: ['latchGuard'] },
  ],
  [
    'swings in',
    { doorType: 'single', exterior: true, handing: 'RH' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'swings out indoors',
    { doorType: 'single', exterior: false, handing: 'LHR' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'a leaf that slides has no hand',
    { doorType: 'slidingManual', exterior: true, handing: 'LHR' },
    'no',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
  [
    'door type not surveyed',
    { exterior: true, handing: 'LHR' },
    'unknown',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'hand not surveyed',
    { doorType: 'single', exterior: true },
    'unknown',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'a magnet has no latch',
    { doorType: 'single', exterior: true, handing: 'LHR' },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'battery lock outdoors',
    { exterior: true },
    'yes',
    { clause: 'c', on: 'batteryLock/asIs/free', does: 'caution' },
  ],
  ['battery lock indoors', { exterior: false }, 'no', { clause: 'c', on: 'batteryLock/asIs/free' }],
  ['battery lock, not surveyed', {}, 'unknown', { clause: 'c', on: 'batteryLock/asIs/free' }],
  ['wired lock outdoors', { exterior: true }, 'no', { clause: 'c', on: 'cylindricalLock/secure/free' }],
);
