import { type Slots, slotOf } from '../logic/compile.ts';
import { type FactKey, fieldInfo, isFactKey } from '../model/fields.ts';

/** A fact's value as a person says it: "90 min", "Hollow metal", "yes", "not surveyed". */
export function valueInWords(key: FactKey, value: string | number | boolean | undefined): string {
  if (value === undefined) return 'not surveyed';
  const info = fieldInfo(key);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return info.unit ? `${value} ${info.unit}` : String(value);
  return info.options?.[value] ?? value;
}

/** A sentence cut at its facts: texts at even places, names of facts at odd ones. */
const cut = new Map<string, readonly string[]>();

/** Replaces `{factKey}` by the fact's value. Other braces stay: an amendment is a person's own sentence. */
export function fillSentence(sentence: string, slots: Slots): string {
  let parts = cut.get(sentence);
  if (!parts) {
    parts = sentence.split(/\{(\w+)\}/);
    cut.set(sentence, parts);
  }
  if (parts.length === 1) return sentence;
  return parts
    .map((part, index) => {
      if (index % 2 === 0) return part;
      return isFactKey(part) ? valueInWords(part, slots[slotOf(part)]) : `{${part}}`;
    })
    .join('');
}
