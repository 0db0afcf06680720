import { type Slots, slotOf } from '../logic/compile.ts';
import { type FactKey, fieldInfo, isFactKey } from '../model/fields.ts';
import { midSentence, startSentence } from './midSentence.ts';

/** A fact's value as a person says it: "90 min", "Hollow metal", "yes", "not surveyed". */
export function valueInWords(key: FactKey, value: string | number | boolean | undefined): string {
  if (value === undefined) return 'not surveyed';
  const info = fieldInfo(key);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return info.unit ? `${value} ${info.unit}` : String(value);
  return info.options?.[value] ?? value;
}

/** The same within a sentence: "the latch is mortise latch with deadbolt", "in B or I-2". */
export function valueInSentence(key: FactKey, value: string | number | boolean | undefined): string {
  const said = valueInWords(key, value);
  return fieldInfo(key).kind === 'choice' ? midSentence(said) : said;
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
      if (!isFactKey(part)) return `{${part}}`;
      const said = valueInSentence(part, slots[slotOf(part)]);
      const before = parts[index - 1] ?? '';
      return (index === 1 && before === '') || /[.!?]\s+$/.test(before) ? startSentence(said) : said;
    })
    .join('');
}
