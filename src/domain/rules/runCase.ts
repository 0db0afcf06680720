import { candidateById, matches } from '../devices/candidates.ts';
import { compile } from '../logic/compile.ts';
import { type Slots, slotCount, slotOf } from '../logic/slots.ts';
import { fillDerived } from '../logic/derived.ts';
import { isPlanKey, type PlanSays } from '../logic/planKeys.ts';
import { type VerdictWord, verdictWord } from '../logic/verdict.ts';
import { type FactValues, isFactKey } from '../model/fields.ts';
import type { CodeBasis } from '../codes/basis.ts';
import { type Clause, caseBasis, type Does, type Effect, type Rule, type RuleCase } from './rule.ts';

/** Slots filled from plain values, derived facts included; whatever is absent stays unknown. */
export function slotsFrom(values: FactValues & PlanSays, basis: CodeBasis): Slots {
  const slots: Slots = new Array(slotCount).fill(undefined);
  for (const [key, value] of Object.entries(values)) {
    if (!isFactKey(key) && !isPlanKey(key)) throw new Error(`There is no fact called ${key}.`);
    slots[slotOf(key)] = value;
  }
  fillDerived(slots, basis);
  return slots;
}

export function clauseOf(rule: Rule, key: string | undefined): Clause {
  const clause =
    key === undefined && rule.clauses.length === 1
      ? rule.clauses[0]
      : rule.clauses.find((one) => one.key === key);
  if (!clause) throw new Error(`${rule.id}: a case names clause "${key}", which is not there.`);
  return clause;
}

/** What a rule answers in one of its own cases. The manual and the tests both use this. */
export function runCase(rule: Rule, ruleCase: RuleCase): VerdictWord {
  const basis = caseBasis(ruleCase.basis);
  const clause = clauseOf(rule, ruleCase.clause);
  if (ruleCase.on !== undefined) {
    const candidate = candidateById(ruleCase.on);
    if (!candidate) throw new Error(`${rule.id}: there is no candidate "${ruleCase.on}".`);
    if (clause.of && !matches(clause.of, candidate)) return 'no';
  }
  return verdictWord(compile(clause.when, basis, rule.id)(slotsFrom(ruleCase.facts, basis)));
}

/** What a clause does, in the form in which cases write it down. */
export function doesOf(clause: Effect): Does {
  switch (clause.effect) {
    case 'require':
      return clause.items;
    case 'modify':
      return `modify ${clause.trade}`;
    case 'signOff':
      return `signOff ${clause.grade}`;
    case 'finding':
      return `${clause.severity} ${clause.field}`;
    case 'prohibit':
    case 'caution':
    case 'permit':
    case 'refer':
      return clause.effect;
  }
}

/** The same parts in another order are the same. */
export function sameDoes(one: Does, other: Does): boolean {
  const plain = (does: Does) => (typeof does === 'string' ? does : does.toSorted().join());
  return plain(one) === plain(other);
}
