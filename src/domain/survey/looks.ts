import type { Look } from './look.ts';
import { looksAround } from './looksAround.ts';
import { looksAtLeaf } from './looksAtLeaf.ts';

/** Every look, in the order of the way round the door. */
export const looks: readonly Look[] = [...looksAtLeaf, ...looksAround];
