import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const kept = [
  'strikeMortise/secure/free',
  'exitTrim/secure/free',
  'latchRetractionMotor/secure/free',
  'latchRetractionSolenoid/secure/free',
];

export const F13Cases = cases(
  ...onEach(
    [...kept, 'strikeCylindrical/secure/free', 'strikeRim/secure/free'],
    'short latch',
    { latchProjectionIn: 0.2 },
    'yes',
    'a',
  ),
  [
    'just under 1/4 in',
    { latchProjectionIn: 0.249 },
    'yes',
    { clause: 'a', on: 'strikeMortise/secure/free', does: 'modify locksmith' },
  ],
  ['1/4 in', { latchProjectionIn: 0.25 }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['not measured', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'a new lock brings its own latch',
    { latchProjectionIn: 0.1 },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free' },
  ],
  [
    'survey: just under 1/4 in',
    { latchProjectionIn: 0.249 },
    'yes',
    { clause: 'b', does: 'warn latchProjectionIn' },
  ],
  ['survey: 1/4 in', { latchProjectionIn: 0.25 }, 'no', { clause: 'b' }],
  ['survey: not measured', {}, 'unknown', { clause: 'b' }],
);
