import { text, under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const nothingLatches = all(yes('fireRated'), is('latch', 'roller', 'pushPull'));

export const R38 = defineRule({
  id: 'R-38',
  title: 'A fire door has a positive latch',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  note: 'A push/pull leaf is treated like a roller latch. Refusing is the safe side: a lock or exit device that latches is always at hand.',
  why: 'Rollers, catches and push plates give way to the pressure of a fire; only a bolt in a strike holds.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: nothingLatches,
      says: 'No latch engages on this fire door today: a push plate, roller or catch does not hold it against fire.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: nothingLatches,
      of: { family: ['strike', 'magnet', 'bolt', 'delayed'], keepsLatch: false },
      says: 'It would be all that holds this fire door, and it is not a latch: choose a self-latching lock or exit device.',
    },
    {
      key: 'c',
      effect: 'require',
      when: nothingLatches,
      items: ['latchingHardware'],
      says: 'Labeled self-latching hardware must be installed; the lock chosen here may be that hardware.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(nothingLatches, is('workStatus', 'existing', 'altered')),
      says: 'A fire door in service has no latch: report it to the reviewer now, and agree on what holds it until the new latch is in.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(
        yes('fireRated'),
        not(is('latch', 'roller', 'pushPull')),
        is('workStatus', 'existing', 'altered'),
      ),
      of: { not: { family: ['none'] } },
      says: 'Positive latching: let it close from fully open and from 4 in open, ten times each; each time the closer must latch it without a push.',
    },
  ],
  cases: cases(
    ['rated, roller latch', { ...rated, latch: 'roller' }, 'yes', { clause: 'a', does: 'warn latch' }],
    ['rated, push/pull', { ...rated, latch: 'pushPull' }, 'yes', { clause: 'a' }],
    ['rated, bored latch', { ...rated, latch: 'bored' }, 'no', { clause: 'a' }],
    ['unrated, roller latch', { ...unrated, latch: 'roller' }, 'no', { clause: 'a' }],
    ['latch not surveyed', rated, 'unknown', { clause: 'a' }],
    [
      'rated, roller latch, strike',
      { ...rated, latch: 'roller' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free', does: 'prohibit' },
    ],
    [
      'rated, push/pull, magnet',
      { ...rated, latch: 'pushPull' },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    [
      'rated, push/pull, bolt',
      { ...rated, latch: 'pushPull' },
      'yes',
      { clause: 'b', on: 'boltMotor/safe/sensor' },
    ],
    [
      'rated, push/pull, delayed magnet',
      { ...rated, latch: 'pushPull' },
      'yes',
      { clause: 'b', on: 'delayedMagnet/safe/delayed' },
    ],
    [
      'a delayed bar brings its latch',
      { ...rated, latch: 'pushPull' },
      'no',
      { clause: 'b', on: 'delayedExitDevice/safe/delayed' },
    ],
    [
      'a mortise lock brings its latch',
      { ...rated, latch: 'pushPull' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'a retraction device latches without power',
      { ...rated, latch: 'pushPull' },
      'no',
      { clause: 'b', on: 'latchRetractionMotor/secure/free' },
    ],
    [
      'rated, mortise latch there',
      { ...rated, latch: 'mortise' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    [
      'unrated, push/pull',
      { ...unrated, latch: 'pushPull' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    ['rating not known', { latch: 'pushPull' }, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    [
      'rated, roller latch',
      { ...rated, latch: 'roller' },
      'yes',
      { clause: 'c', does: ['latchingHardware'] },
    ],
    ['rated, push/pull', { ...rated, latch: 'pushPull' }, 'yes', { clause: 'c' }],
    ['rated, rim device', { ...rated, latch: 'rimExit' }, 'no', { clause: 'c' }],
    ['unrated, roller latch', { ...unrated, latch: 'roller' }, 'no', { clause: 'c' }],
    ['latch not surveyed', rated, 'unknown', { clause: 'c' }],
    ...(['roller', 'pushPull'] as const).flatMap((latch) =>
      (['existing', 'altered'] as const).map(
        (workStatus): CaseRow => [
          'no latch on a fire door in use',
          { ...rated, latch, workStatus },
          'yes',
          { clause: 'd', does: 'signOff must' },
        ],
      ),
    ),
    [
      'new opening: the latch is ordered with it',
      { ...rated, latch: 'pushPull', workStatus: 'new' },
      'no',
      { clause: 'd' },
    ],
    ['rated, mortise latch', { ...rated, latch: 'mortise', workStatus: 'existing' }, 'no', { clause: 'd' }],
    ['unrated, push/pull', { ...unrated, latch: 'pushPull', workStatus: 'existing' }, 'no', { clause: 'd' }],
    ['latch not surveyed', { ...rated, workStatus: 'existing' }, 'unknown', { clause: 'd' }],
    ['new or not: not known', { ...rated, latch: 'roller' }, 'unknown', { clause: 'd' }],
    [
      'fire door in use, mortise latch',
      { ...rated, latch: 'mortise', workStatus: 'existing' },
      'yes',
      { clause: 'e', on: 'strikeMortise/secure/free', does: 'caution' },
    ],
    [
      'being altered',
      { ...rated, latch: 'mortise', workStatus: 'altered' },
      'yes',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    [
      'new opening',
      { ...rated, latch: 'mortise', workStatus: 'new' },
      'no',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    [
      'roller latch',
      { ...rated, latch: 'roller', workStatus: 'existing' },
      'no',
      { clause: 'e', on: 'mortiseLock/secure/free' },
    ],
    [
      'push/pull',
      { ...rated, latch: 'pushPull', workStatus: 'existing' },
      'no',
      { clause: 'e', on: 'mortiseLock/secure/free' },
    ],
    [
      'unrated',
      { ...unrated, latch: 'mortise', workStatus: 'existing' },
      'no',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    [
      'latch not surveyed',
      { ...rated, workStatus: 'existing' },
      'unknown',
      { clause: 'e', on: 'strikeMortise/secure/free' },
    ],
    [
      'no lock at all',
      { ...rated, latch: 'mortise', workStatus: 'existing' },
      'no',
      { clause: 'e', on: 'noLock/none/free' },
    ],
  ),
});
