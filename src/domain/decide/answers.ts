import { limits } from '../codes/limits.ts';
import type { Condition } from '../logic/condition.ts';
import { derivedDefinition } from '../logic/derived.ts';
import { derivedKeys } from '../logic/derivedKeys.ts';
import { type FactKey, fieldInfo, isFactKey, type AnyValue } from '../model/fields.ts';
import { fitRows } from '../fit/matrix.ts';
import { allRules } from '../rules/all.ts';

/** Every bound any rule holds a number against, so that both sides of each are among the answers tried. */
const boundsOf = new Map<FactKey, Set<number>>();

function collect(condition: Condition): void {
  switch (condition.op) {
    case 'compare': {
      if (!isFactKey(condition.fact)) return;
      const found = boundsOf.get(condition.fact) ?? new Set<number>();
      boundsOf.set(condition.fact, found);
      if (typeof condition.bound === 'number') found.add(condition.bound);
      else for (const entry of Object.values(limits[condition.bound].editions)) found.add(entry.value);
      return;
    }
    case 'all':
    case 'any':
      condition.of.forEach(collect);
      return;
    case 'not':
      collect(condition.of);
      return;
    default:
  }
}
for (const rule of allRules) for (const clause of rule.clauses) collect(clause.when);
for (const row of fitRows) collect(row.when);
for (const key of derivedKeys) collect(derivedDefinition(key));

const remembered = new Map<FactKey, readonly AnyValue[]>();

/**
 * Every answer to a fact that any rule can tell apart: all choices, yes and no, and for a number each bound with
 * one below and one above, within the field's range.
 */
export function answersTo(key: FactKey): readonly AnyValue[] {
  let answers = remembered.get(key);
  if (!answers) {
    answers = listAnswers(key);
    remembered.set(key, answers);
  }
  return answers;
}

function listAnswers(key: FactKey): readonly AnyValue[] {
  const info = fieldInfo(key);
  if (info.kind === 'yesNo') return [true, false];
  if (info.kind === 'choice') return Object.keys(info.options ?? {});
  const [min, max] = [info.min ?? 0, info.max ?? 0];
  const tried = new Set<number>([min]);
  for (const bound of boundsOf.get(key) ?? []) {
    for (const value of [bound - 1, bound, bound + 1]) if (value >= min && value <= max) tried.add(value);
  }
  return [...tried].toSorted((a, b) => a - b);
}
