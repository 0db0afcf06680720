import { text } from '../../codes/sections.ts';
import { always, no } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const withTransfer = [
  'mortiseLock/secure/free',
  'cylindricalLock/safe/free',
  'exitTrim/secure/free',
  'latchRetractionMotor/secure/free',
  'delayedExitDevice/safe/delayed',
  'narrowStileLatch/secure/free',
];

export const F08 = defineRule({
  id: 'F-08',
  title: 'Wiring across the hinges',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A device in the leaf gets its power across the hinges and through the leaf.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['powerTransfer'],
      when: always,
      of: { transfer: true },
      says: 'A power transfer with enough conductors for the lock and its switches.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['leafRaceway'],
      when: no('leafRaceway'),
      of: { transfer: true },
      says: 'The leaf has no raceway from hinge to lock: core it, or replace it with one made that way.',
    },
  ],
  cases: cases(
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
  ),
});
