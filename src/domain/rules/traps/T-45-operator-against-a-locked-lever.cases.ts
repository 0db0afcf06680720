import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';

export const T45Cases = cases(
  [
    'operator, stair side to be locked',
    { operator: 'lowEnergy', egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'yes',
    { clause: 'd', does: 'caution' },
  ],
  [
    'full-power operator, stair side to be locked',
    { operator: 'fullPower', egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'yes',
    { clause: 'd' },
  ],
  [
    'operator, both sides open',
    { operator: 'lowEnergy', egressRole: 'stairEntry', stairLockWanted: 'none', readerSides: 'none' },
    'no',
    { clause: 'd' },
  ],
  [
    'no operator, stair side to be locked',
    { operator: 'none', egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'no',
    { clause: 'd' },
  ],
  [
    'operator not surveyed, stair side to be locked',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
    'unknown',
    { clause: 'd' },
  ],
  ...onEach(
    [
      'magnet/safe/sensor',
      'shearMagnet/safe/sensor',
      'boltSolenoid/safe/sensor',
      'boltMotor/safe/doorSwitch',
      'delayedMagnet/safe/delayed',
    ],
    'operator on a latched leaf',
    { operator: 'lowEnergy', latch: 'bored' },
    'yes',
    'c',
  ),
  [
    'full-power operator on a latched leaf',
    { operator: 'fullPower', latch: 'bored' },
    'yes',
    { clause: 'c', on: 'magnet/safe/sensor', does: 'prohibit' },
  ],
  ...(['pushPull', 'roller', 'patch', 'operatorLock'] as const).map(
    (latch): CaseRow => [
      `operator, ${latch}`,
      { operator: 'lowEnergy', latch },
      'no',
      { clause: 'c', on: 'magnet/safe/sensor' },
    ],
  ),
  [
    'no operator, latched leaf',
    { operator: 'none', latch: 'bored' },
    'no',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'operator, latch not known',
    { operator: 'lowEnergy' },
    'unknown',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'a strike frees that latch',
    { operator: 'lowEnergy', latch: 'bored' },
    'no',
    { clause: 'c', on: 'strikeCylindrical/secure/free' },
  ],
  ...onEach(
    [
      'mortiseLock/secure/free',
      'mortiseLock/safe/free',
      'cylindricalLock/secure/free',
      'narrowStileLatch/secure/free',
      'batteryLock/asIs/free',
    ],
    'low-energy operator',
    { operator: 'lowEnergy' },
    'yes',
    'a',
  ),
  [
    'full-power operator',
    { operator: 'fullPower' },
    'yes',
    { clause: 'a', on: 'mortiseLock/secure/free', does: 'prohibit' },
  ],
  [
    'power assist helps a person who turned the lever',
    { operator: 'powerAssist' },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  ['no operator', { operator: 'none' }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  ['operator not surveyed', {}, 'unknown', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'a strike frees the latch',
    { operator: 'lowEnergy' },
    'no',
    { clause: 'a', on: 'strikeMortise/secure/free' },
  ],
  ...onEach(
    ['mechanicalLock/none/free', 'gateLock/secure/free', 'delayedExitDevice/safe/delayed'],
    'low-energy operator',
    { operator: 'lowEnergy' },
    'yes',
    'b',
  ),
  [
    'full-power operator, mechanical lock',
    { operator: 'fullPower' },
    'yes',
    { clause: 'b', on: 'mechanicalLock/none/free', does: 'caution' },
  ],
  [
    'no operator, mechanical lock',
    { operator: 'none' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/free' },
  ],
  ['operator not surveyed, mechanical lock', {}, 'unknown', { clause: 'b', on: 'mechanicalLock/none/free' }],
  [
    'retraction draws the latch',
    { operator: 'lowEnergy' },
    'no',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
);
