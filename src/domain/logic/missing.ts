import { type CodeBasis, basisKey } from '../codes/basis.ts';
import { type FactKey, isFactKey } from '../model/fields.ts';
import { compile, type Test } from './compile.ts';
import type { Slots } from './slots.ts';
import type { Condition, Readable } from './condition.ts';
import { derivedDefinition } from './derived.ts';
import { isPlanKey } from './planKeys.ts';
import { UNKNOWN } from './verdict.ts';

/**
 * The surveyed facts that keep a condition from an answer. Parts that are settled are passed over: a fact that
 * can no longer change the answer is not asked for. Derived facts lead to the surveyed ones behind them.
 */
export function missingFacts(
  condition: Condition,
  basis: CodeBasis,
  slots: Slots,
  into: Set<FactKey> = new Set(),
): Set<FactKey> {
  if (testOf(condition, basis)(slots) !== UNKNOWN) return into;
  switch (condition.op) {
    case 'is':
    case 'compare':
      addBehind(condition.fact, basis, slots, into);
      break;
    case 'not':
      missingFacts(condition.of, basis, slots, into);
      break;
    case 'all':
    case 'any':
      for (const part of condition.of) missingFacts(part, basis, slots, into);
      break;
    case 'always':
    case 'edition':
    case 'known':
      break;
  }
  return into;
}

function addBehind(fact: Readable, basis: CodeBasis, slots: Slots, into: Set<FactKey>): void {
  if (isFactKey(fact)) into.add(fact);
  else if (!isPlanKey(fact)) missingFacts(derivedDefinition(fact), basis, slots, into);
}

/** Compiled once per condition and basis: the search for the next question asks thousands of times. */
const tests = new WeakMap<Condition, Map<string, Test>>();

function testOf(condition: Condition, basis: CodeBasis): Test {
  let byBasis = tests.get(condition);
  if (!byBasis) {
    byBasis = new Map();
    tests.set(condition, byBasis);
  }
  const key = basisKey(basis);
  let test = byBasis.get(key);
  if (!test) {
    test = compile(condition, basis, 'missing facts');
    byBasis.set(key, test);
  }
  return test;
}
