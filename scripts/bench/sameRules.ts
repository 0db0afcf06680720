import { Engine, type NestedCondition } from 'json-rules-engine';
import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import { limitValue } from '../../src/domain/codes/limits.ts';
import type { Comparison, Condition } from '../../src/domain/logic/condition.ts';
import { derivedDefinition } from '../../src/domain/logic/derived.ts';
import { isPlanKey } from '../../src/domain/logic/planKeys.ts';
import { isFactKey } from '../../src/domain/model/fields.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import type { Clause, Rule } from '../../src/domain/rules/rule.ts';

/** A clause of the rule book, and its condition for an engine that knows neither editions nor derived facts. */
export interface Chosen {
  readonly rule: Rule;
  readonly clause: Clause;
  /** Editions and limits settled, derived facts replaced by what they stand for. */
  readonly plain: Condition;
}

/** The clauses of these names, rule and letter, in this order. */
export function clausesNamed(names: readonly string[], basis: CodeBasis): readonly Chosen[] {
  const all = allRules.flatMap((rule) => rule.clauses.map((clause) => ({ rule, clause })));
  return names.map((name) => {
    const found = all.find(({ rule, clause }) => `${rule.id}${clause.key ?? ''}` === name);
    if (!found) throw new Error(`There is no clause ${name}; mend scripts/bench/byHand.`);
    return { ...found, plain: simplify(found.clause.when, basis, found.rule.id) };
  });
}

const never: Condition = { op: 'any', of: [] };
const isNever = (condition: Condition) => condition.op === 'any' && condition.of.length === 0;

function simplify(condition: Condition, basis: CodeBasis, asker: string): Condition {
  switch (condition.op) {
    case 'edition': {
      const edition = basis[condition.book];
      const inside =
        edition !== null && edition >= (condition.from ?? 0) && edition <= (condition.to ?? 9999);
      return inside ? { op: 'always' } : never;
    }
    // Everything is known in this comparison.
    case 'known':
      return { op: 'always' };
    case 'compare':
      return typeof condition.bound === 'number'
        ? condition
        : { ...condition, bound: limitValue(condition.bound, basis, asker) };
    case 'is': {
      if (isFactKey(condition.fact)) return condition;
      if (isPlanKey(condition.fact)) return condition.values.includes(true) ? never : { op: 'always' };
      const meaning = simplify(derivedDefinition(condition.fact), basis, asker);
      return condition.values.includes(true) ? meaning : negated(meaning);
    }
    case 'not':
      return negated(simplify(condition.of, basis, asker));
    case 'all':
    case 'any':
      return joined(
        condition.op,
        condition.of.map((part) => simplify(part, basis, asker)),
      );
    case 'always':
      return condition;
  }
}

function negated(condition: Condition): Condition {
  if (condition.op === 'always') return never;
  return isNever(condition) ? { op: 'always' } : { op: 'not', of: condition };
}

function joined(op: 'all' | 'any', parts: readonly Condition[]): Condition {
  const ends = op === 'all' ? isNever : (one: Condition) => one.op === 'always';
  const skips = op === 'all' ? (one: Condition) => one.op === 'always' : isNever;
  const end = parts.find(ends);
  if (end) return end;
  const rest = parts.filter((part) => !skips(part));
  if (rest.length === 0) return op === 'all' ? { op: 'always' } : never;
  return rest.length === 1 ? (rest[0] as Condition) : { op, of: rest };
}

const libraryOperator: Record<Comparison, string> = {
  atLeast: 'greaterThanInclusive',
  over: 'greaterThan',
  atMost: 'lessThanInclusive',
  under: 'lessThan',
};

function libraryCondition(condition: Condition): NestedCondition {
  switch (condition.op) {
    case 'is':
      return { fact: condition.fact, operator: 'in', value: [...condition.values] };
    case 'compare':
      return { fact: condition.fact, operator: libraryOperator[condition.how], value: condition.bound };
    case 'not':
      return { not: libraryCondition(condition.of) };
    case 'all':
      return { all: condition.of.map(libraryCondition) };
    case 'any':
      return { any: condition.of.map(libraryCondition) };
    default:
      throw new Error(`The library has no ${condition.op}.`);
  }
}

export function libraryEngine(chosen: readonly Chosen[]): Engine {
  const engine = new Engine();
  chosen.forEach(({ plain }, index) => {
    // Speaks only of what is unknown, and the library is asked where all is known.
    if (isNever(plain)) return;
    // The library wants all, any or not at the top.
    const conditions = { all: [libraryCondition(plain)] };
    engine.addRule({ conditions, event: { type: String(index) } });
  });
  return engine;
}
