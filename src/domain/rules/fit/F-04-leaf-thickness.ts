import { text } from '../../codes/sections.ts';
import { all, atLeast, is, not, over, under } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const lockLeaf = not(is('leafMaterial', 'glassFrameless', 'chainLink', 'rollingSteel'));

export const F04 = defineRule({
  id: 'F-04',
  title: 'Leaf thickness and heavy locks',
  family: 'fit',
  book: 'practice',
  cites: [text('bhma', 'A156.115', 'Hardware preparation in steel doors and frames'), text('practice', '')],
  confidence: 'secondary',
  why: 'Commercial locks are made for a leaf of 1-3/4 in, and many heavy ones take no other.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(
        lockLeaf,
        under('leafThicknessIn', 'commercialLeafThicknessIn'),
        atLeast('leafThicknessIn', 'thinnestLockLeafIn'),
      ),
      of: {
        device: [
          'mortiseLock',
          'cylindricalLock',
          'exitTrim',
          'latchRetractionMotor',
          'latchRetractionSolenoid',
          'delayedExitDevice',
        ],
      },
      says: 'The leaf is {leafThicknessIn} thick and heavy locks are made for 1-3/4 in: order one its manufacturer offers for this thickness.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(lockLeaf, under('leafThicknessIn', 'thinnestLockLeafIn')),
      of: { device: ['mortiseLock', 'cylindricalLock', 'batteryLock', 'mechanicalLock'] },
      says: 'The leaf is {leafThicknessIn} thick; bored and mortise locks start at 1-3/8 in.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(lockLeaf, over('leafThicknessIn', 'commercialLeafThicknessIn')),
      of: { device: ['mortiseLock', 'cylindricalLock', 'batteryLock', 'mechanicalLock'] },
      says: 'The leaf is {leafThicknessIn} thick: order the lock with its thick-door parts, which reach about 2-1/4 in.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(lockLeaf, over('leafThicknessIn', 'thickestLockLeafIn')),
      of: { device: ['cylindricalLock', 'batteryLock'] },
      says: 'The leaf is {leafThicknessIn} thick; thick-door parts of bored locks end at about 2-1/4 in.',
    },
  ],
});
