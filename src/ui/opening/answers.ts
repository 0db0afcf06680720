import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey } from '../../domain/model/fields.ts';
import { type Choice, choiceGroupsOf } from '../../domain/survey/choiceGroups.ts';

/** The text that stands in the field for a fact: empty while nobody was asked, "?" when nobody could tell. */
export function shownValue(fact: Fact<unknown> | undefined): string {
  if (fact === undefined) return '';
  if (fact.is === 'unknown') return '?';
  if (typeof fact.value === 'boolean') return fact.value ? 'yes' : 'no';
  if (typeof fact.value === 'number') return String(Math.round(fact.value * 1000) / 1000);
  return String(fact.value);
}

/** What a select offers for a fact; undefined for numbers. */
export function choicesOf(key: FactKey): readonly Choice[] | undefined {
  return choiceGroupsOf(key)?.flatMap((group) => group.choices);
}
