import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R52 = defineRule({
  id: 'R-52',
  title: 'A smoke door keeps its gasketing',
  family: 'fire',
  book: 'ul',
  cites: [text('ul', 'UL 1784', 'Air leakage of door assemblies')],
  confidence: 'memory',
  why: 'Leakage was measured with the hardware in place; a lip or an armature that breaks the gasket changes the result.',
  clauses: [
    {
      effect: 'caution',
      when: yes('smokeSeals'),
      of: { family: ['strike', 'magnet', 'delayed'], keepsLatch: false },
      says: 'Strike lip or magnet plate can interrupt the gasket of this smoke door: choose a kit for gasketed frames, or the smoke label may be voided.',
    },
  ],
  cases: cases(
    ['smoke door, strike', { smokeSeals: true }, 'yes', { on: 'strikeMortise/secure/free', does: 'caution' }],
    ['smoke door, magnet', { smokeSeals: true }, 'yes', { on: 'magnet/safe/sensor' }],
    ['smoke door, delayed magnet', { smokeSeals: true }, 'yes', { on: 'delayedMagnet/safe/delayed' }],
    ['smoke door, delayed bar', { smokeSeals: true }, 'no', { on: 'delayedExitDevice/safe/delayed' }],
    ['smoke door, lock in the leaf', { smokeSeals: true }, 'no', { on: 'mortiseLock/secure/free' }],
    ['smoke door, latch retraction', { smokeSeals: true }, 'no', { on: 'latchRetractionMotor/secure/free' }],
    ['no seals', { smokeSeals: false }, 'no', { on: 'strikeMortise/secure/free' }],
    ['seals not surveyed', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
  ),
});
