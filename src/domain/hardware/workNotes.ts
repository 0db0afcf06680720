import { groutNote } from '../fit/notes.ts';
import type { Arranged } from './arranged.ts';
import { valueIn } from '../logic/slots.ts';

/** Rails are bought for a glass leaf that has none. */
const railsNote = 29;

/** Numbers of the notes that say what the choice changes at this door and frame: of its pairing, and of its grout. */
export function workNotes({ chosen, slots }: Pick<Arranged, 'chosen' | 'slots'>): readonly number[] {
  if (!chosen) return [];
  const rails = valueIn(slots, 'glassRails') === 'both';
  const fitting = (chosen.cell?.notes ?? []).filter((note) => !(rails && note === railsNote));
  const grouted = valueIn(slots, 'frameGrouted') === true && valueIn(slots, 'workStatus') !== 'new';
  const grout = grouted ? groutNote(chosen.candidate.device) : undefined;
  return grout === undefined ? fitting : [...fitting, grout];
}
