import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const court = { roomUse: 'courtroom' } as const;

export const R133Cases = cases(
  ...onEach(['magnet/safe/doorSwitch', 'delayedExitDevice/safe/delayed'], 'courtroom', court, 'yes', {
    clause: 'a',
    does: 'signOff must',
  }),
  ['free bar', court, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
  ['room not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
  ['courtroom', court, 'yes', { clause: 'b', does: 'caution' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'b' }],
  ['room not known', {}, 'unknown', { clause: 'b' }],
  ['courtroom', court, 'yes', { clause: 'c', on: 'magnet/safe/sensor', does: 'caution' }],
  ['switch in the bar', court, 'no', { clause: 'c', on: 'magnet/safe/doorSwitch' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
  ['room not known', {}, 'unknown', { clause: 'c', on: 'magnet/safe/sensor' }],
);
