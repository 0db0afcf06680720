import { type FactKey, type FactValues, valueEntries } from '../model/fields.ts';
import type { DrawingOfLook } from './lookDrawings.ts';
import type { Station } from './stations.ts';

/** One answer to a look: what somebody sees at once, and the facts it stands for. */
export interface Preset {
  readonly label: string;
  readonly facts: FactValues;
}

/**
 * Several questions that one look answers. Whoever sees none of the answers offered is asked one question after the
 * other, and so is whoever refuses it.
 */
export interface Look {
  readonly id: string;
  readonly station: Station;
  readonly ask: string;
  readonly help?: string;
  readonly drawing?: DrawingOfLook;
  /** Put only while this is open: the rest of its facts can be had elsewhere, too. */
  readonly lead?: FactKey;
  readonly presets: readonly Preset[];
}

export function factsOfLook({ presets }: Pick<Look, 'presets'>): readonly FactKey[] {
  return [...new Set(presets.flatMap(({ facts }) => valueEntries(facts).map(([key]) => key)))];
}
