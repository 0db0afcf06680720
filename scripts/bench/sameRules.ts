import { Engine, type NestedCondition } from 'json-rules-engine';
import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import { limitValue } from '../../src/domain/codes/limits.ts';
import type { Comparison, Condition } from '../../src/domain/logic/condition.ts';
import { derivedDefinition } from '../../src/domain/logic/derived.ts';
import { type FactValues, isFactKey } from '../../src/domain/model/fields.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import type { Clause, Rule } from '../../src/domain/rules/rule.ts';

/**
 * The same clauses in two other forms: for the library json-rules-engine, and as the plain code that a person
 * would write out, `if (f.occupantLoad >= 50 && …)`. Derived facts are written out where they are read.
 */
export interface Chosen {
  readonly rule: Rule;
  readonly clause: Clause;
  /** Editions and limits settled, derived facts replaced by what they stand for. */
  readonly plain: Condition;
}

/** Every eighth prohibition, and others until there are enough; only those that depend on facts. */
export function chooseClauses(count: number, basis: CodeBasis): readonly Chosen[] {
  const all = allRules.flatMap((rule) =>
    rule.clauses.map((clause) => ({ rule, clause, plain: simplify(clause.when, basis, rule.id) })),
  );
  const usable = all.filter(({ plain }) => plain.op !== 'always' && !isNever(plain));
  const step = Math.floor(usable.length / count);
  return usable.filter((_one, index) => index % step === 0).slice(0, count);
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
    // The library wants all, any or not at the top.
    const conditions = { all: [libraryCondition(plain)] };
    engine.addRule({ conditions, event: { type: String(index) } });
  });
  return engine;
}

const codeOperator: Record<Comparison, string> = { atLeast: '>=', over: '>', atMost: '<=', under: '<' };

function code(condition: Condition): string {
  switch (condition.op) {
    case 'is':
      return `(${condition.values.map((value) => `f.${condition.fact} === ${JSON.stringify(value)}`).join(' || ')})`;
    case 'compare':
      return `f.${condition.fact} ${codeOperator[condition.how]} ${condition.bound}`;
    case 'not':
      return `!(${code(condition.of)})`;
    case 'all':
    case 'any':
      return `(${condition.of.map(code).join(condition.op === 'all' ? ' && ' : ' || ')})`;
    default:
      throw new Error(`Plain code has no ${condition.op}.`);
  }
}

export type PlainFunction = (facts: FactValues, into: Uint8Array) => number;

/** The clauses written out as one function of plain code, which answers how many hold and which. */
export function plainFunction(chosen: readonly Chosen[]): PlainFunction {
  const lines = chosen.map(({ plain }, index) => `if (${code(plain)}) { into[${index}] = 1; hits++; }`);
  // oxlint-disable-next-line no-new-func typescript/no-implied-eval -- the text is made above from our own rules, for this comparison only
  return new Function('f', 'into', `let hits = 0;\n${lines.join('\n')}\nreturn hits;`) as PlainFunction;
}
