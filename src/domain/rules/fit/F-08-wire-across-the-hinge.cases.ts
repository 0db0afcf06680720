import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const withTransfer = [
  'mortiseLock/secure/free',
  'cylindricalLock/safe/free',
  'exitTrim/secure/free',
  'latchRetractionMotor/secure/free',
  'delayedExitDevice/safe/delayed',
  'narrowStileLatch/secure/free',
];

export const F08Cases = cases(
  ...onEach(withTransfer, 'device in the leaf', {}, 'yes', { clause: 'a', does: ['powerTransfer'] }),
  ['a strike stays in the frame', {}, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],

  [
    'no wire way',
    { leafRaceway: false },
    'yes',
    { clause: 'b', on: 'mortiseLock/secure/free', does: ['leafRaceway'] },
  ],
  ['wire way there', { leafRaceway: true }, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['not surveyed', {}, 'unknown', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['a magnet needs none', { leafRaceway: false }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
);
