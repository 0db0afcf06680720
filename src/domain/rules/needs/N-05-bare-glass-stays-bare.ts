import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N05 = defineRule({
  id: 'N-05',
  title: 'Nothing visible where nothing may show',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A device on the face of an all-glass leaf is what the owner asked not to see.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(yes('wishGlassBareLook'), is('leafMaterial', 'glassFrameless')),
      of: {
        device: [
          'magnet',
          'delayedMagnet',
          'strikeRim',
          'batteryLock',
          'glassRailExit',
          'exitTrim',
          'delayedExitDevice',
        ],
      },
      says: 'Nothing may show on the leaf, and this device is in plain sight.',
    },
  ],
});
