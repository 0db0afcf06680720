import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T16 = defineRule({
  id: 'T-16',
  title: 'Door with preload on its latch',
  family: 'traps',
  book: 'practice',
  cites: [text('bhma', 'A156.31', 'Electric strikes, optional preload test'), text('practice', '')],
  confidence: 'secondary',
  why: 'Gasket, warp or stack pressure binds the keeper, and release under load is only an optional strike test.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['preloadStrike'],
      when: yes('latchPreload'),
      of: { family: ['strike'] },
      says: 'There is preload on the latch: use a strike tested to release under preload, or correct the door first.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('latchPreload'),
      of: { device: ['shearMagnet', 'boltSolenoid', 'boltMotor', 'glassPatchLock'] },
      says: 'There is preload on the latch: a bolt or shear magnet binds under side load, so correct the door first.',
    },
  ],
});
