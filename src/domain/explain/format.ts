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

/** Replaces `{factKey}` by the fact's value. Throws on a name that is no fact: that is a slip in a rule. */
export function fillSentence(sentence: string, slots: Slots): string {
  return sentence.replace(/\{(\w+)\}/g, (_whole, name: string) => {
    if (!isFactKey(name)) throw new Error(`A sentence names “${name}”, which is no fact: ${sentence}`);
    return valueInWords(name, slots[slotOf(name)]);
  });
}
