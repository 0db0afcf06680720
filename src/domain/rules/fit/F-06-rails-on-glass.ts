import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const glass = is('leafMaterial', 'glassFrameless');
const rail = 'glassRailExit/secure/free';
const shear = 'shearMagnet/safe/sensor';
const patch = 'glassPatchLock/safe/sensor';

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
  cases: cases(
    [
      'patches only, rail device',
      { leafMaterial: 'glassFrameless', glassRails: 'none' },
      'yes',
      { clause: 'a', on: rail, does: 'modify doorSupplier' },
    ],
    [
      'top rail only, rail device',
      { leafMaterial: 'glassFrameless', glassRails: 'top' },
      'yes',
      { clause: 'a', on: rail },
    ],
    [
      'both rails, rail device',
      { leafMaterial: 'glassFrameless', glassRails: 'both' },
      'no',
      { clause: 'a', on: rail },
    ],
    ['rails not surveyed', { leafMaterial: 'glassFrameless' }, 'unknown', { clause: 'a', on: rail }],
    ['steel leaf', { leafMaterial: 'hollowMetal', glassRails: 'none' }, 'no', { clause: 'a', on: rail }],
    [
      'patches only is no matter to a patch lock',
      { leafMaterial: 'glassFrameless', glassRails: 'none' },
      'no',
      { clause: 'a', on: patch },
    ],
    [
      'patches only, shear magnet',
      { leafMaterial: 'glassFrameless', glassRails: 'none' },
      'yes',
      { clause: 'b', on: shear, does: 'modify doorSupplier' },
    ],
    [
      'top rail, shear magnet',
      { leafMaterial: 'glassFrameless', glassRails: 'top' },
      'no',
      { clause: 'b', on: shear },
    ],
    [
      'rails not surveyed, shear magnet',
      { leafMaterial: 'glassFrameless' },
      'unknown',
      { clause: 'b', on: shear },
    ],
    [
      'steel leaf, shear magnet',
      { leafMaterial: 'hollowMetal', glassRails: 'none' },
      'no',
      { clause: 'b', on: shear },
    ],
    [
      'a direct-hold magnet takes a glass bracket',
      { leafMaterial: 'glassFrameless', glassRails: 'none' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    [
      'both rails, patch lock',
      { leafMaterial: 'glassFrameless', glassRails: 'both' },
      'yes',
      { clause: 'c', on: patch, does: 'modify doorSupplier' },
    ],
    [
      'top rail, patch lock',
      { leafMaterial: 'glassFrameless', glassRails: 'top' },
      'yes',
      { clause: 'c', on: patch },
    ],
    [
      'patches, patch lock',
      { leafMaterial: 'glassFrameless', glassRails: 'none' },
      'no',
      { clause: 'c', on: patch },
    ],
    [
      'rails not surveyed, patch lock',
      { leafMaterial: 'glassFrameless' },
      'unknown',
      { clause: 'c', on: patch },
    ],
    [
      'steel leaf, patch lock',
      { leafMaterial: 'hollowMetal', glassRails: 'both' },
      'no',
      { clause: 'c', on: patch },
    ],
    [
      'both rails suit the rail device',
      { leafMaterial: 'glassFrameless', glassRails: 'both' },
      'no',
      { clause: 'c', on: rail },
    ],
  ),
});
