import { basisKey, type CodeBasis } from '../codes/basis.ts';
import { limitValue } from '../codes/limits.ts';
import { citesInWords } from '../words/steps.ts';
import type { Step } from '../decide/ruleBook.ts';
import type { Condition } from '../logic/condition.ts';
import { fingerprint } from '../model/fingerprint.ts';
import { textOf } from '../model/sorted.ts';
import type { Clause } from '../rules/rule.ts';

export type RuleSeen = {
  /** The sections it was read in, with their edition. */
  readonly edition: string;
  /** A mark of all it says and asks, the figures of the edition among it. */
  readonly text: string;
};

const remembered = new WeakMap<Clause, Map<string, RuleSeen>>();

/** A clause as it read on the day: it reads otherwise once its sentence, its condition or a figure behind it changes. */
export function ruleSeen({ rule, clause }: Step, basis: CodeBasis): RuleSeen {
  let byBasis = remembered.get(clause);
  if (!byBasis) remembered.set(clause, (byBasis = new Map()));
  const key = basisKey(basis);
  let seen = byBasis.get(key);
  if (!seen) {
    const edition = citesInWords({ rule }, basis).join('; ');
    const figures = figuresIn(clause.when, basis, rule.id);
    seen = { edition, text: fingerprint(textOf([rule.id, clause, figures])) };
    byBasis.set(key, seen);
  }
  return seen;
}

function figuresIn(condition: Condition, basis: CodeBasis, asker: string): readonly number[] {
  switch (condition.op) {
    case 'compare':
      return typeof condition.bound === 'number' ? [] : [limitValue(condition.bound, basis, asker)];
    case 'all':
    case 'any':
      return condition.of.flatMap((one) => figuresIn(one, basis, asker));
    case 'not':
      return figuresIn(condition.of, basis, asker);
    default:
      return [];
  }
}
