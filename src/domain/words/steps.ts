import type { CodeBasis } from '../codes/basis.ts';
import { citeInWords } from '../codes/sections.ts';
import type { Decision } from '../decide/decision.ts';
import type { Step } from '../decide/ruleBook.ts';
import { confidenceInWords, isSecondHand, type Rule } from '../rules/rule.ts';
import { fillSentence } from '../text/format.ts';

export interface StepWords {
  readonly ruleId: string;
  readonly sentence: string;
  readonly cites: readonly string[];
  readonly confidence: string;
  /** The rule was not read in the code's own text. */
  readonly secondHand: boolean;
  readonly note: string | undefined;
}

export function stepInWords(step: Step, decision: Pick<Decision, 'slots' | 'basis'>): StepWords {
  return {
    ruleId: step.rule.id,
    // What is not sure is named by its title: its sentence would speak of facts nobody knows.
    sentence: step.sure
      ? fillSentence(step.clause.says, decision.slots)
      : `${step.rule.title}: not known yet whether it applies.`,
    cites: citesInWords(step, decision.basis),
    confidence: confidenceInWords(step.rule.confidence),
    secondHand: isSecondHand(step.rule),
    note: step.rule.note,
  };
}

/** Clauses of one rule that are in doubt all read alike; a reader wants the sentence once. */
export function stepsInWords(
  steps: readonly Step[],
  decision: Pick<Decision, 'slots' | 'basis'>,
): readonly StepWords[] {
  const once = new Map<string, StepWords>();
  for (const step of steps) {
    const words = stepInWords(step, decision);
    const said = `${words.sentence} ${words.ruleId}`;
    if (!once.has(said)) once.set(said, words);
  }
  return [...once.values()];
}

const citesByBasis = new WeakMap<CodeBasis, Map<Rule, readonly string[]>>();

/** The same for every opening of a project, so it is put into words once. */
export function citesInWords(step: Pick<Step, 'rule'>, basis: CodeBasis): readonly string[] {
  let byRule = citesByBasis.get(basis);
  if (!byRule) {
    byRule = new Map();
    citesByBasis.set(basis, byRule);
  }
  let cites = byRule.get(step.rule);
  if (!cites) {
    cites = step.rule.cites.map((cite) => citeInWords(cite, basis));
    byRule.set(step.rule, cites);
  }
  return cites;
}
