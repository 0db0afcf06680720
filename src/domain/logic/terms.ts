import type { CodeBasis } from '../codes/basis.ts';
import { compile } from './compile.ts';
import { all, any, type Condition, factsRead, not, type Readable } from './condition.ts';
import { derivedDefinition } from './derived.ts';
import { isDerivedKey } from './derivedKeys.ts';
import { YES } from './verdict.ts';

/** Parts that must hold together, one per fact; a part reads no other fact than its own. */
export type Term = ReadonlyMap<Readable, Condition>;

const never: readonly Term[] = [];
const always: readonly Term[] = [new Map()];

/**
 * A condition written as alternatives: it holds where every part of one term holds. In three values, too, because
 * "and" and "or" may be multiplied out and "not" pushed inward there as with plain yes and no. What may not be done
 * is to strike out "it is so and it is not so": that is unknown while the fact is.
 */
export function termsOf(condition: Condition, basis: CodeBasis, holds = true): readonly Term[] {
  switch (condition.op) {
    case 'always':
      return holds ? always : never;
    case 'edition':
      return (compile(condition, basis, 'terms')([]) === YES) === holds ? always : never;
    case 'not':
      return termsOf(condition.of, basis, !holds);
    case 'all':
    case 'any': {
      const lists = condition.of.map((part) => termsOf(part, basis, holds));
      return (condition.op === 'any') === holds ? oneOf(lists.flat()) : lists.reduce(together, always);
    }
    case 'is':
      return isTerms(condition, basis, holds);
    case 'compare':
    case 'known':
      return part(condition, holds);
  }
}

function part(condition: Extract<Condition, { fact: Readable }>, holds: boolean): readonly Term[] {
  return [new Map([[condition.fact, holds ? condition : not(condition)]])];
}

/** A derived fact that looks at one surveyed fact only is that fact under another name. */
function isTerms(
  condition: Extract<Condition, { op: 'is' }>,
  basis: CodeBasis,
  holds: boolean,
): readonly Term[] {
  const { fact, values } = condition;
  if (!isDerivedKey(fact) || values.length !== 1) return part(condition, holds);
  const meaning = derivedDefinition(fact);
  return factsRead(meaning).size === 1
    ? termsOf(meaning, basis, (values[0] === true) === holds)
    : part(condition, holds);
}

/** Alternatives that look at the same single fact become one. */
function oneOf(terms: readonly Term[]): readonly Term[] {
  if (terms.some((term) => term.size === 0)) return always;
  const single = new Map<Readable, Condition>();
  for (const term of terms) if (term.size === 1) merge(single, term, any);
  return [
    ...[...single].map(([fact, condition]) => new Map([[fact, condition]])),
    ...terms.filter((term) => term.size > 1),
  ];
}

function together(left: readonly Term[], right: readonly Term[]): readonly Term[] {
  return left.flatMap((one) =>
    right.map((other) => {
      const term = new Map(one);
      merge(term, other, all);
      return term;
    }),
  );
}

function merge(into: Map<Readable, Condition>, term: Term, by: typeof all): void {
  for (const [fact, condition] of term) {
    const before = into.get(fact);
    into.set(fact, before ? by(before, condition) : condition);
  }
}
