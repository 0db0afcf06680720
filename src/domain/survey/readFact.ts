import type { Fact } from '../model/fact.ts';
import { type FactKey, factSchemas, fieldInfo } from '../model/fields.ts';
import { alsoWritten } from './amounts.ts';
import { parseLength } from '../units/length.ts';

type Value = string | number | boolean;
export type ReadFact =
  | { readonly ok: true; readonly fact: Fact<Value> | null }
  | { readonly ok: false; readonly says: string; readonly problem: null };

/**
 * What a person typed or picked for a fact → a known fact; "?" → asked, and nobody could tell; empty text → not asked. Lengths may be written as
 * 36, 36", 3'-0" or 915 mm. What cannot be read comes back as one sentence, and the text stays with the person.
 */
export function readFact(key: FactKey, text: string): ReadFact {
  const trimmed = text.trim();
  if (trimmed === '') return { ok: true, fact: null };
  if (trimmed === '?') return { ok: true, fact: { is: 'unknown' } };
  const info = fieldInfo(key);
  let value: Value = trimmed;
  if (info.kind === 'yesNo') {
    if (trimmed !== 'yes' && trimmed !== 'no') return wrong(`${info.label} is answered by yes or no.`);
    value = trimmed === 'yes';
  } else if (info.kind === 'number') {
    if (info.unit === 'in') {
      const length = parseLength(trimmed, { bare: 'in' });
      if (!length.ok) return wrong(length.says);
      value = length.inches;
    } else {
      value = Number(trimmed.replace(/\s*(min|ft²|ft2|ft|people|stories|A|V|lbf|doors|s|h)$/i, ''));
      if (!Number.isFinite(value))
        return wrong(`${info.label} must be a number${info.unit ? ` of ${info.unit}` : ''}.`);
    }
  }
  const parsed = factSchemas[key].safeParse(value);
  if (!parsed.success)
    return wrong(parsed.error.issues[0]?.message ?? `${info.label} cannot be “${trimmed}”.`);
  return { ok: true, fact: { is: 'known', value } };
}

function wrong(says: string): ReadFact {
  return { ok: false, says, problem: null };
}

/** While a length is being typed: how it is understood in the other spellings. Empty as long as it cannot be read. */
export function alsoTyped(key: FactKey, text: string): string {
  const read = readFact(key, text);
  return read.ok && read.fact !== null && read.fact.is === 'known' ? alsoWritten(key, read.fact.value) : '';
}
