import { cases } from '../rule.ts';

export const B23Cases = cases(
  [
    'no room in the stile',
    { leafMaterial: 'aluminiumNarrow', latch: 'bored' },
    'yes',
    { does: 'warn latch' },
  ],
  ['no room in the stile', { leafMaterial: 'aluminiumNarrow', latch: 'mortise' }, 'yes'],
  ['no room in the stile', { leafMaterial: 'aluminiumNarrow', latch: 'mortiseDeadbolt' }, 'yes'],
  ['no room in the stile', { leafMaterial: 'aluminiumNarrow', latch: 'boredPlusDeadbolt' }, 'yes'],
  ['narrow-stile deadlatch', { leafMaterial: 'aluminiumNarrow', latch: 'deadlatch' }, 'no'],
  ['wide stile', { leafMaterial: 'aluminiumWide', latch: 'mortise' }, 'no'],
  ['latch not seen', { leafMaterial: 'aluminiumNarrow' }, 'unknown'],
);
