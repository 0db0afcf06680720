import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const barThere = { ...rated, latch: 'rimExit' } as const;

export const R34Cases = cases(
  ['rated, rim device found', barThere, 'yes', { clause: 'a', does: ['fireExitHardware'] }],
  [
    'rated, lever lock, but panic hardware needed',
    {
      ...rated,
      latch: 'mortise',
      panicPresent: false,
      egressRole: 'exitAccess',
      doorType: 'single',
      occupancyGroup: 'A-2',
      occupantLoad: 120,
      readerSides: 'secure',
    },
    'yes',
    { clause: 'a' },
  ],
  [
    'rated office door with a lever',
    {
      ...rated,
      latch: 'mortise',
      panicPresent: false,
      egressRole: 'exitAccess',
      doorType: 'single',
      occupancyGroup: 'B',
      occupantLoad: 20,
      roomUse: 'office',
    },
    'no',
    { clause: 'a' },
  ],
  ['unrated door with a bar', { ...unrated, latch: 'rimExit' }, 'no', { clause: 'a' }],
  ['rated, latch not surveyed', rated, 'unknown', { clause: 'a' }],
  [
    'trim on a rated door',
    rated,
    'yes',
    { clause: 'b', on: 'exitTrim/secure/free', does: ['fireExitHardware'] },
  ],
  ['trim on an unrated door', unrated, 'no', { clause: 'b', on: 'exitTrim/secure/free' }],
  ['lever lock on a rated door', rated, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['rating not known', {}, 'unknown', { clause: 'b', on: 'strikeRim/secure/free' }],
  [
    'rated, bar without fire label',
    { ...barThere, exitHardwareFireListed: false },
    'yes',
    { clause: 'c', does: 'warn exitHardwareFireListed' },
  ],
  ['rated, bar with fire label', { ...barThere, exitHardwareFireListed: true }, 'no', { clause: 'c' }],
  [
    'unrated, bar without fire label',
    { ...unrated, latch: 'rimExit', exitHardwareFireListed: false },
    'no',
    { clause: 'c' },
  ],
  [
    'rated, no bar',
    { ...rated, latch: 'mortise', panicPresent: false, exitHardwareFireListed: false },
    'no',
    { clause: 'c' },
  ],
  ['label not looked for', barThere, 'unknown', { clause: 'c' }],
  ...onEach(
    ['mechanicalLock/none/free', 'magnet/safe/doorSwitch'],
    'rated, rim device found',
    barThere,
    'yes',
    'a',
  ),
  ['the exit device is clause b', barThere, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
);
