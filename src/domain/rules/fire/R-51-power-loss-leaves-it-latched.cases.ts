import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

export const R51Cases = cases(
  ['rated, fail-safe strike', rated, 'yes', { clause: 'a', on: 'strikeRim/safe/free', does: 'prohibit' }],
  ['rated, fail-safe bolt', rated, 'yes', { clause: 'a', on: 'boltMotor/safe/sensor' }],
  ['rated, fail secure strike', rated, 'no', { clause: 'a', on: 'strikeRim/secure/free' }],
  ['rated, fail-safe mortise lock', rated, 'no', { clause: 'a', on: 'mortiseLock/safe/free' }],
  ['rated, magnet beside a latch', rated, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['unrated, fail-safe strike', unrated, 'no', { clause: 'a', on: 'strikeRim/safe/free' }],
  ['rating not known', {}, 'unknown', { clause: 'a', on: 'strikeRim/safe/free' }],
  ['rated, magnet', rated, 'yes', { clause: 'b', on: 'magnet/safe/sensor', does: 'caution' }],
  ['rated, delayed magnet', rated, 'yes', { clause: 'b', on: 'delayedMagnet/safe/delayed' }],
  ['rated, delayed bar keeps its latch', rated, 'no', { clause: 'b', on: 'delayedExitDevice/safe/delayed' }],
  ['rated, fail-safe strike is refused', rated, 'no', { clause: 'b', on: 'strikeRim/safe/free' }],
  ['rated, fail-safe bolt is refused', rated, 'no', { clause: 'b', on: 'boltMotor/safe/sensor' }],
  [
    'rated, latch retraction falls into the latched state',
    rated,
    'no',
    { clause: 'b', on: 'latchRetractionMotor/secure/free' },
  ],
  ['unrated, magnet', unrated, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ['rating not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
  [
    'rated, fail-safe mortise lock',
    rated,
    'yes',
    { clause: 'c', on: 'mortiseLock/safe/free', does: 'permit' },
  ],
  ['rated, fail-safe trim', rated, 'yes', { clause: 'c', on: 'exitTrim/safe/free' }],
  ['rated, fail secure lock needs no such word', rated, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ['rated, magnet', rated, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
  [
    'rated, delayed bar has its own rules',
    rated,
    'no',
    { clause: 'c', on: 'delayedExitDevice/safe/delayed' },
  ],
  ['unrated', unrated, 'no', { clause: 'c', on: 'mortiseLock/safe/free' }],
  ['rating not known', {}, 'unknown', { clause: 'c', on: 'mortiseLock/safe/free' }],
);
