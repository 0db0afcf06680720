import { cases } from '../rule.ts';

const rail = 'glassRailExit/secure/free';

const shear = 'shearMagnet/safe/sensor';

const patch = 'glassPatchLock/safe/sensor';

export const F06Cases = cases(
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
);
