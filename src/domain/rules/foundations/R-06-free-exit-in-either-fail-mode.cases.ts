import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const room = { egressRole: 'exitAccess' } as const;

const unrated = { ...room, fireRatingMin: 0, wallRatingMin: 0 } as const;

export const R06Cases = cases(
  ...onEach(
    [
      'mortiseLock/secure/free',
      'mortiseLock/safe/free',
      'exitTrim/safe/free',
      'latchRetractionMotor/secure/free',
      'narrowStileLatch/secure/free',
    ],
    'ordinary room door',
    room,
    'yes',
    'a',
  ),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'stair side to be locked',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  [
    'stair door, both sides open',
    { egressRole: 'stairEntry', stairLockWanted: 'none' },
    'yes',
    { clause: 'a', on: 'mortiseLock/secure/free', does: 'permit' },
  ],
  [
    'stair door, wish not known',
    { egressRole: 'stairEntry' },
    'unknown',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ...onEach(
    [
      'magnet/safe/sensor',
      'mortiseLock/secure/credentialOut',
      'exitTrim/safe/stairReentry',
      'strikeRim/secure/free',
      'mechanicalLock/none/free',
    ],
    'not meant here',
    room,
    'no',
    'a',
  ),
  ...onEach(
    ['strikeMortise/secure/free', 'strikeMortise/safe/free', 'strikeRim/safe/free'],
    'unrated room door',
    unrated,
    'yes',
    { clause: 'b', does: 'permit' },
  ),
  ['rated door', { ...room, fireRatingMin: 20 }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ['rating not known', room, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  [
    'cabinet',
    { ...unrated, egressRole: 'noOccupiedSpace' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'stair side to be locked',
    { ...unrated, egressRole: 'stairEntry', stairLockWanted: 'both' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  ...onEach(
    ['strikeMortise/secure/none', 'mortiseLock/secure/free', 'magnet/safe/sensor'],
    'not meant here',
    unrated,
    'no',
    'b',
  ),
);
