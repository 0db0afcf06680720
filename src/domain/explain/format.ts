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

/** Replaces `{factKey}` by the fact's value. Throws on a name that is no fact: that is a slip in a rule. */
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
      if (!isFactKey(part)) throw new Error(`A sentence names “${part}”, which is no fact: ${sentence}`);
      return valueInWords(part, slots[slotOf(part)]);
    })
    .join('');
}
