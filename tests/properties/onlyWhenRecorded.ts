import type { Condition } from '../../src/domain/logic/condition.ts';
import { derivedDefinition } from '../../src/domain/logic/derived.ts';
import { derivedKeys } from '../../src/domain/logic/derivedKeys.ts';
import { type FactKey, isFactKey } from '../../src/domain/model/fields.ts';
import { allRules } from '../../src/domain/rules/all.ts';

/** Some rules hear a fact only when somebody recorded it; such a fact is offered in the survey and never asked. */
const found = new Set<FactKey>();
for (const rule of allRules) for (const clause of rule.clauses) collectKnown(clause.when);
for (const key of derivedKeys) collectKnown(derivedDefinition(key));
function collectKnown(condition: Condition): void {
  if (condition.op === 'known' && isFactKey(condition.fact)) found.add(condition.fact);
  else if (condition.op === 'not') collectKnown(condition.of);
  else if (condition.op === 'all' || condition.op === 'any') condition.of.forEach(collectKnown);
}

export const heardOnlyWhenRecorded: ReadonlySet<FactKey> = found;
