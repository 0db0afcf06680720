import fc from 'fast-check';
import { bases } from './space.ts';
import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import { answersTo } from '../../src/domain/decide/answers.ts';
import { decideFacts } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { type RuleBook, ruleBookFor, type Step } from '../../src/domain/decide/ruleBook.ts';
import type { Condition } from '../../src/domain/logic/condition.ts';
import { derivedDefinition } from '../../src/domain/logic/derived.ts';
import { isPlanKey } from '../../src/domain/logic/planKeys.ts';
import { type FactKey, factKeys, type FactValues, isFactKey } from '../../src/domain/model/fields.ts';
import { defaultWeights } from '../../src/domain/model/project.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import { casesOf } from '../../src/domain/rules/allCases.ts';
import { caseBasis } from '../../src/domain/rules/rule.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';

/** Openings made up for properties: close enough to real ones that rules speak, and wild enough to surprise. */
export interface Survey {
  readonly facts: FactValues;
  readonly basis: CodeBasis;
}

/** What is at the door in every case of every rule, each under its own basis. */
export const caseSurveys: readonly Survey[] = allRules.flatMap((rule) =>
  casesOf(rule).map((one) => ({ facts: one.facts, basis: caseBasis(one.basis) })),
);

const aBasisOfSpace: fc.Arbitrary<CodeBasis> = fc.constantFrom(
  ...bases,
  { ibc: 2024, nfpa101: 2024, nec: 2023, nfpa72: 2022 },
  { ibc: 2018, nfpa101: 2018, nec: 2017, nfpa72: 2016 },
);

const anAnswer: fc.Arbitrary<FactValues> = fc
  .constantFrom(...factKeys)
  .chain((key) => fc.constantFrom(...answersTo(key)).map((value) => ({ [key]: value })));

/** Up to three cases of rules laid over each other, with a few answers of any kind on top. */
export const aSurvey: fc.Arbitrary<Survey> = fc
  .tuple(
    fc.array(fc.constantFrom(...caseSurveys), { minLength: 1, maxLength: 3 }),
    fc.array(anAnswer, { maxLength: 12 }),
    fc.option(aBasisOfSpace),
  )
  .map(([laid, answers, basis]) => ({
    facts: Object.assign({}, ...laid.map((one) => one.facts), ...answers) as FactValues,
    basis: basis ?? (laid[0] as Survey).basis,
  }));

/** One survey and the same with some of its facts not surveyed. */
export const aSurveyWithGaps: fc.Arbitrary<Survey & { readonly fewer: FactValues }> = aSurvey.chain(
  (survey) => {
    const keys = Object.keys(survey.facts) as FactKey[];
    return fc
      .subarray(keys, { minLength: Math.min(1, keys.length), maxLength: Math.min(3, keys.length) })
      .map((gone) => ({ ...survey, fewer: leave(survey.facts, gone) }));
  },
);

export function leave(facts: FactValues, gone: readonly FactKey[]): FactValues {
  return Object.fromEntries(Object.entries(facts).filter(([key]) => !gone.includes(key as FactKey)));
}

export function decideSurvey({ facts, basis }: Survey, book: RuleBook = ruleBookFor(basis, [])): Decision {
  return decideFacts({ slots: slotsFrom(facts, basis), assumed: new Map() }, book, defaultWeights);
}

const stepWords = (steps: readonly Step[]) =>
  steps.map((one) => `${one.rule.id}${one.clause.key ?? ''}${one.sure ? '' : '?'}`).toSorted();

/** Everything a decision says, in an order of its own, so that two can be held against each other. */
export function essence(decision: Decision) {
  return {
    state: decision.state,
    chosen: decision.chosen?.candidate.id,
    tenths: decision.chosen?.score.tenths,
    runnerUp: decision.runnerUp?.candidate.id,
    nearTie: decision.nearTie,
    rejected: decision.rejected.map((one) => [one.candidate.id, ...stepWords(one.because)].join(' ')),
    open: decision.open.map((one) => [one.candidate.id, one.tenths, ...stepWords(one.because)].join(' ')),
    wouldHaveLed: decision.wouldHaveLed?.candidate.id,
    steps: (
      ['requires', 'modifies', 'signOffs', 'cautions', 'permits', 'findings', 'refers', 'depends'] as const
    ).map((kind) => [kind, ...stepWords(decision[kind])].join(' ')),
    rows: decision.rows.map((row) => row.row),
    relied: [...decision.relied],
  };
}

/**
 * Whether a leaf of this kind stands in a condition under an odd number of negations (`denied`) or an even one,
 * the definitions of derived facts included.
 */
export function stands(condition: Condition, denied: boolean, test: (leaf: Condition) => boolean): boolean {
  switch (condition.op) {
    case 'not':
      return stands(condition.of, !denied, test);
    case 'all':
    case 'any':
      return condition.of.some((part) => stands(part, denied, test));
    case 'is':
      if (isFactKey(condition.fact) || isPlanKey(condition.fact)) return !denied && test(condition);
      return stands(
        derivedDefinition(condition.fact),
        condition.values.includes(true) ? denied : !denied,
        test,
      );
    default:
      return !denied && test(condition);
  }
}
