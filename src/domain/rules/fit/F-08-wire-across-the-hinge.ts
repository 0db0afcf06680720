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
  title: 'A wire across the hinge line',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'What sits in the leaf gets its power over the hinge line and through the leaf.',
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
      effect: 'modify',
      trade: 'doorSupplier',
      when: no('leafRaceway'),
      of: { transfer: true },
      says: 'The leaf has no wire way from hinge to lock: it must be cored, or replaced by one made with it.',
    },
    {
      key: 'c',
      effect: 'require',
      items: ['leafRaceway'],
      when: no('leafRaceway'),
      of: { transfer: true },
      says: 'A wire way in the leaf from hinge to lock.',
    },
  ],
  cases: cases(
    ...onEach(withTransfer, 'device in the leaf', {}, 'yes', 'a'),
    ['a strike stays in the frame', {}, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
    ...(['b', 'c'] as const).flatMap((clause) => [
      ['no wire way', { leafRaceway: false }, 'yes', { clause, on: 'mortiseLock/secure/free' }] as const,
      ['wire way there', { leafRaceway: true }, 'no', { clause, on: 'mortiseLock/secure/free' }] as const,
      ['not surveyed', {}, 'unknown', { clause, on: 'mortiseLock/secure/free' }] as const,
      ['a magnet needs none', { leafRaceway: false }, 'no', { clause, on: 'magnet/safe/sensor' }] as const,
    ]),
  ),
});
