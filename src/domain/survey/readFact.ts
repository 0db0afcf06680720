import { type AnyFact } from '../model/fact.ts';
import { type FactKey } from '../model/fields.ts';
import { alsoWritten } from './amounts.ts';
import { readCell } from './readValue.ts';

export type ReadFact =
  | { readonly ok: true; readonly fact: AnyFact | null }
  | { readonly ok: false; readonly says: string; readonly problem: null };

/**
 * What a person typed or picked for a fact → a known fact; "?" → asked, and nobody could tell; empty text → not
 * asked. Read like a cell of a door list: lengths as 36, 36", 3'-0" or 915 mm, a figure in another unit refused. What cannot be read comes back as one sentence, and the text stays with the person.
 */
export function readFact(key: FactKey, text: string): ReadFact {
  const read = readCell(key, text);
  return read.ok ? read : { ok: false, says: read.says, problem: null };
}

/** While a length is being typed: how it is understood in the other spellings. Empty as long as it cannot be read. */
export function alsoTyped(key: FactKey, text: string): string {
  const read = readFact(key, text);
  return read.ok && read.fact !== null && read.fact.is === 'known' ? alsoWritten(key, read.fact.value) : '';
}
