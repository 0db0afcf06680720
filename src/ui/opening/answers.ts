import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';

/** What a select or radio group offers for a fact; undefined for numbers. */
export function choicesOf(key: FactKey): readonly { value: string; label: string }[] | undefined {
  const info = fieldInfo(key);
  if (info.kind === 'yesNo') {
    return [
      { value: 'yes', label: 'Yes' },
      { value: 'no', label: 'No' },
    ];
  }
  if (info.kind === 'number') return undefined;
  return Object.entries(info.options ?? {}).map(([value, label]) => ({ value, label }));
}

/** The text that stands in the field for a fact; empty when it is not known. */
export function shownValue(fact: Fact<unknown> | undefined): string {
  if (fact === undefined || fact.is === 'unknown') return '';
  if (typeof fact.value === 'boolean') return fact.value ? 'yes' : 'no';
  return String(fact.value);
}
