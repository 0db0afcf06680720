import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import { answersTo } from '../../src/domain/decide/answers.ts';
import { surveyedFacts } from '../../src/domain/decide/ruleBook.ts';
import { candidateById, type CandidateMatch, matches } from '../../src/domain/devices/candidates.ts';
import { compile } from '../../src/domain/logic/compile.ts';
import type { Slots } from '../../src/domain/logic/slots.ts';
import type { Condition } from '../../src/domain/logic/condition.ts';
import { derivedDefinition } from '../../src/domain/logic/derived.ts';
import type { DerivedKey } from '../../src/domain/logic/derivedKeys.ts';
import { verdictWord } from '../../src/domain/logic/verdict.ts';
import { type FactKey, fieldInfo, type FactValues } from '../../src/domain/model/fields.ts';
import { casesOf } from '../../src/domain/rules/allCases.ts';
import { type Clause, caseBasis, type Rule, type RuleCase } from '../../src/domain/rules/rule.ts';
import { clauseOf, doesOf, sameDoes, slotsFrom } from '../../src/domain/rules/runCase.ts';
import { derivedCases } from '../../src/domain/testing/derivedCases.ts';
import { bases, seeded } from '../../tests/properties/space.ts';
import { type ConditionMutant, conditionMutants, effectMutants, matchMutants } from './mutants.ts';

/** How a mutant of a rule fared against the rule's own cases. */
export type Fate = 'killed' | 'survived' | 'same';
export interface Tried {
  readonly rule: Rule;
  readonly clause: Clause;
  readonly says: string;
  readonly kind: 'condition' | 'candidates' | 'items' | 'effect';
  /** `same`: no opening was found that tells it from the rule, so no case could. */
  readonly fate: Fate;
}

interface ReadyCase {
  readonly one: RuleCase;
  readonly basis: CodeBasis;
  readonly slots: Slots;
}

export function mutateClause(
  rule: Rule,
  clause: Clause,
  ruleCases: readonly RuleCase[] = casesOf(rule),
): readonly Tried[] {
  const cases = ruleCases
    .filter((one) => clauseOf(rule, one.clause) === clause)
    .map((one): ReadyCase => {
      const basis = caseBasis(one.basis);
      return { one, basis, slots: slotsFrom(one.facts, basis) };
    });
  const spoken = cases.filter(({ one }) => speaksOf(clause.of, one));
  const conditions = conditionMutants(clause.when).map((mutant): Tried => {
    const fate = spoken.some((ready) => answer(mutant, ready, rule) !== ready.one.expect)
      ? 'killed'
      : tellApart(mutant, clause, spoken, rule)
        ? 'survived'
        : 'same';
    return { rule, clause, says: mutant.says, kind: 'condition', fate };
  });
  const candidates = (clause.of ? matchMutants(clause.of) : []).map((mutant): Tried => {
    const killed = cases.some((ready) => {
      const found = speaksOf(mutant.of, ready.one) ? plainAnswer(clause, ready, rule) : 'no';
      return found !== ready.one.expect;
    });
    return { rule, clause, says: mutant.says, kind: 'candidates', fate: killed ? 'killed' : 'survived' };
  });
  const effects = effectMutants(clause).map(({ says, kind, effect }): Tried => {
    const does = doesOf(effect);
    const killed = cases.some(({ one }) => one.does !== undefined && !sameDoes(one.does, does));
    return { rule, clause, says, kind, fate: killed ? 'killed' : 'survived' };
  });
  return [...conditions, ...candidates, ...effects];
}

function speaksOf(of: CandidateMatch | undefined, { on }: RuleCase): boolean {
  const candidate = on === undefined ? undefined : candidateById(on);
  return candidate === undefined || of === undefined || matches(of, candidate);
}

function answer(mutant: ConditionMutant, { basis, slots }: ReadyCase, rule: Rule) {
  return verdictWord(compile(mutant.when(basis), basis, rule.id)(slots));
}
function plainAnswer(clause: Clause, { basis, slots }: ReadyCase, rule: Rule) {
  return verdictWord(compile(clause.when, basis, rule.id)(slots));
}

/** Openings tried before a mutant counts as the same rule in other words. */
const tries = 3000;

/** Looks for an opening that would make a missing case: the cases of the clause with a few facts answered anew. */
function tellApart(
  mutant: ConditionMutant,
  clause: Clause,
  cases: readonly ReadyCase[],
  rule: Rule,
): boolean {
  const random = seeded(mutant.says.length + rule.id.length);
  const used = [...new Set([...cases.map((ready) => ready.basis), ...bases])];
  return differs(clause.when, mutant, used, random, () => pick(cases, random)?.one.facts ?? {});
}

function pick<T>(from: readonly T[], random: () => number): T {
  return from[Math.floor(random() * from.length)] as T;
}

/** Answers that rules tell apart, lengths to the sixteenth of an inch. */
function finely(key: FactKey) {
  const answers = answersTo(key);
  if (fieldInfo(key).unit !== 'in') return answers;
  return answers.flatMap((value) => [value, Number(value) - 0.0625, Number(value) + 0.0625]);
}

function differs(
  original: Condition,
  mutant: ConditionMutant,
  used: readonly CodeBasis[],
  random: () => number,
  start: () => FactValues,
): boolean {
  const facts = surveyedFacts(original);
  const tests = used.map((basis) => ({
    basis,
    original: compile(original, basis, 'original'),
    changed: compile(mutant.when(basis), basis, 'mutant'),
  }));
  for (let count = 0; count < tries; count++) {
    const values: Partial<Record<FactKey, unknown>> = { ...start() };
    const changes = facts.length === 0 ? 0 : Math.floor(random() * 4);
    for (let change = 0; change < changes; change++) {
      const key = pick(facts, random);
      values[key] = random() < 0.15 ? undefined : pick(finely(key), random);
    }
    const { basis, original: before, changed } = pick(tests, random);
    const slots = slotsFrom(values as FactValues, basis);
    if (before(slots) !== changed(slots)) return true;
  }
  return false;
}

interface TriedDerived {
  readonly says: string;
  readonly fate: Fate;
}

/**
 * A derived fact changed, held against its cases. The reasons for panic hardware are the same text as the conditions
 * of, and are changed there; here one of them is only dropped.
 */
export function mutateDerived(key: DerivedKey): readonly TriedDerived[] {
  const definition = derivedDefinition(key);
  const cases = derivedCases
    .filter(([of]) => of === key)
    .map(([, facts, expected, patch]) => {
      const basis = caseBasis(patch);
      return { facts, expected, basis, slots: slotsFrom(facts, basis) };
    });
  const mutants = conditionMutants(definition).slice(
    0,
    key === 'panicRequired' || key === 'panicWithLock' ? topMutants(definition) : undefined,
  );
  return mutants.map((mutant): TriedDerived => {
    const killed = cases.some(
      ({ basis, slots, expected }) =>
        verdictWord(compile(mutant.when(basis), basis, key)(slots)) !== expected,
    );
    const random = seeded(mutant.says.length);
    const apart =
      killed || differs(definition, mutant, bases, random, () => pick(cases, random)?.facts ?? {});
    return { says: `${key}: ${mutant.says}`, fate: killed ? 'killed' : apart ? 'survived' : 'same' };
  });
}

/** Of a list: swapped, and each part dropped. */
function topMutants(condition: Condition): number {
  return condition.op === 'all' || condition.op === 'any' ? condition.of.length + 1 : 1;
}
