import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T38 = defineRule({
  id: 'T-38',
  title: 'Metal door as a conductor',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A leaf or frame that carries lock current, or an armature that touches the frame, gives false bond signals.',
  clauses: [
    {
      effect: 'caution',
      when: is('leafMaterial', 'hollowMetal', 'aluminiumNarrow', 'aluminiumMedium', 'aluminiumWide'),
      of: { device: ['magnet', 'shearMagnet', 'delayedMagnet'] },
      says: 'Never use the metal leaf or frame as a conductor and keep the armature clear of the frame: the bond sensor would report falsely.',
    },
  ],
});
