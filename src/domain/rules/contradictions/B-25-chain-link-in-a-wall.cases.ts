import { cases } from '../rule.ts';

export const B25Cases = cases(
  [
    'mesh in a wall',
    { leafMaterial: 'chainLink', wallKind: 'corridor' },
    'yes',
    { does: 'refuse leafMaterial' },
  ],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'otherPartition' }, 'yes'],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'fireBarrier' }, 'yes'],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'exitEnclosure' }, 'yes'],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'horizontalExit' }, 'yes'],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'fireWall' }, 'yes'],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'smokeBarrier' }, 'yes'],
  ['mesh in a wall', { leafMaterial: 'chainLink', wallKind: 'smokePartition' }, 'yes'],
  ['fence', { leafMaterial: 'chainLink', wallKind: 'none' }, 'no'],
  ['hollow metal', { leafMaterial: 'hollowMetal', wallKind: 'corridor' }, 'no'],
  ['wall not known', { leafMaterial: 'chainLink' }, 'unknown'],
);
