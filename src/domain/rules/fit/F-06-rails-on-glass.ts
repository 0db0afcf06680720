import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const glass = is('leafMaterial', 'glassFrameless');

export const F06 = defineRule({
  id: 'F-06',
  title: 'Rails and patches on a glass leaf',
  family: 'fit',
  book: 'practice',
  cites: [text('bhma', 'A156.44', 'Glass door hardware'), text('practice', '')],
  confidence: 'practice',
  why: 'Glass is not cut on site: the hardware sits in the rails or patches that are there.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(glass, is('glassRails', 'none', 'top')),
      of: { device: ['glassRailExit'] },
      says: 'A rail exit device needs full-width rails at top and bottom: usually a new leaf.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(glass, is('glassRails', 'none')),
      of: { device: ['shearMagnet'] },
      says: 'The armature of a shear magnet needs a rail at the top of the glass.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(glass, is('glassRails', 'top', 'both')),
      of: { device: ['glassPatchLock'] },
      says: 'The leaf has a rail where a patch lock would sit: the lock must be made for the rail, the header or the floor.',
    },
  ],
});
