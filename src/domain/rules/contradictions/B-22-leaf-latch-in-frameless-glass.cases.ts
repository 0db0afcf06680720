import { cases } from '../rule.ts';

export const B22Cases = cases(
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'bored' }, 'yes', { does: 'refuse latch' }],
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'mortise' }, 'yes'],
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'mortiseDeadbolt' }, 'yes'],
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'boredPlusDeadbolt' }, 'yes'],
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'deadlatch' }, 'yes'],
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'rimExit' }, 'yes'],
  ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'rimPlusRods' }, 'yes'],
  ['glass hardware', { leafMaterial: 'glassFrameless', latch: 'patch' }, 'no'],
  ['glass hardware', { leafMaterial: 'glassFrameless', latch: 'railExit' }, 'no'],
  ['glass hardware', { leafMaterial: 'glassFrameless', latch: 'pushPull' }, 'no'],
  ['hollow metal', { leafMaterial: 'hollowMetal', latch: 'mortise' }, 'no'],
  ['latch not seen', { leafMaterial: 'glassFrameless' }, 'unknown'],
);
