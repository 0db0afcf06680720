import type { FactValue } from './fields.ts';

type Latch = FactValue<'latch'>;

/** What holds a leaf, by the way a person opens it from inside. Each value but a lock of the operator stands in one list. */
export const leverLatches = [
  'bored',
  'mortise',
  'mortiseDeadbolt',
  'boredPlusDeadbolt',
  'deadlatch',
  'gateLock',
] as const satisfies readonly Latch[];
export const barLatches = [
  'rimExit',
  'verticalRods',
  'rimPlusRods',
  'railExit',
] as const satisfies readonly Latch[];
/** Thrown and drawn by a key or thumb turn; no lever works them and nothing else draws them. */
export const handBolts = ['deadboltOnly', 'hookbolt', 'patch'] as const satisfies readonly Latch[];
/** Nothing to turn: the leaf is only pushed or pulled. */
export const bareLatches = ['pushPull', 'roller'] as const satisfies readonly Latch[];
