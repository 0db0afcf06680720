import { text } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T45 = defineRule({
  id: 'T-45',
  title: 'Operator against a lock whose latch stays out',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'Locking or unlocking a lever leaves the latch in its strike, and the operator drives against it in either fail mode.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('operator', 'lowEnergy', 'fullPower'),
      of: { device: ['mortiseLock', 'cylindricalLock', 'narrowStileLatch', 'batteryLock'] },
      says: 'The latch of this lock stays projected while the operator drives: use latch retraction, a strike, or a lock that retracts its own latch.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('operator', 'lowEnergy', 'fullPower'),
      of: { device: ['mechanicalLock', 'gateLock', 'delayedExitDevice'] },
      says: 'Nothing retracts this latch for the operator: it works only while the door is unlatched by other means.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(
        is('operator', 'lowEnergy', 'fullPower'),
        not(is('latch', 'pushPull', 'roller', 'patch', 'operatorLock')),
      ),
      of: { device: ['magnet', 'shearMagnet', 'boltSolenoid', 'boltMotor', 'delayedMagnet'] },
      says: 'This lock releases, but the latch of the leaf stays projected and the operator drives against it.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(is('operator', 'lowEnergy', 'fullPower'), yes('stairSideToLock')),
      says: 'An operator on a door whose stair side is locked takes a device that does both: fail-safe trim to come back in, and a retraction for the operator that drops on fire detection. It is not among the arrangements judged here: ask a reviewer and the manufacturer, or omit one of the two.',
    },
  ],
});
