import type { CodeBasis } from '../../domain/codes/basis.ts';
import { citeInWords } from '../../domain/codes/sections.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Step } from '../../domain/decide/ruleBook.ts';
import { type SignOffReason, signOffReasons, gradeWords } from '../../domain/words/signOff.ts';
import { citesInWords } from '../../domain/words/steps.ts';
import { ruleById } from '../../domain/rules/all.ts';
import { confidenceInWords } from '../../domain/rules/rule.ts';

/** Why an opening needs a name, with what it rests on. */
export interface ReasonInFull extends SignOffReason {
  readonly gradeWord: string;
  /** Section numbers with their edition; empty where no rule stands behind the reason. */
  readonly cites: readonly string[];
  /** How the rule was read; empty where there is none. */
  readonly confidence: string;
  readonly note: string;
  /** Rule, sections and how it was read; only the rule where the line above said the rest already. */
  readonly source: string;
}

export function reasonsInFull(decision: Decision): readonly ReasonInFull[] {
  const steps = stepsById(decision);
  const said = new Set<string>();
  return signOffReasons(decision).map((reason) => {
    const step = reason.ruleId === undefined ? undefined : steps.get(reason.ruleId);
    const full = {
      ...reason,
      gradeWord: gradeWords[reason.grade],
      cites: step ? citesInWords(step, decision.basis) : [],
      confidence: step ? confidenceInWords(step.rule.confidence) : '',
      note: step?.rule.note ?? '',
    };
    const { ruleId = '' } = reason;
    const source = said.has(ruleId) ? ruleId : sourceInWords(full);
    said.add(ruleId);
    return { ...full, source };
  });
}

/** Reasons name their rule only by id; these are the places in a decision where it can come from. */
function stepsById(decision: Decision): ReadonlyMap<string, Step> {
  const found = new Map<string, Step>();
  const put = (steps: readonly Step[]) => {
    for (const step of steps) if (!found.has(step.rule.id)) found.set(step.rule.id, step);
  };
  put(decision.signOffs);
  put(decision.refers);
  for (const { because } of decision.rejected) put(because);
  return found;
}

/** A reason that a rule along the way out gives: the rule is known by its id, no decision holds it. */
export function reasonOfRule(
  ruleId: string,
  grade: SignOffReason['grade'],
  sentence: string,
  basis: CodeBasis,
): ReasonInFull {
  const rule = ruleById.get(ruleId);
  const full = {
    flag: `building:${ruleId}`,
    ruleId,
    grade,
    sentence,
    gradeWord: gradeWords[grade],
    cites: rule ? rule.cites.map((cite) => citeInWords(cite, basis)) : [],
    confidence: rule ? confidenceInWords(rule.confidence) : '',
    note: rule?.note ?? '',
  };
  return { ...full, source: sourceInWords(full) };
}

/** "R-55 · IBC 2021 1010.2.7 (Stairway doors) · read in the code’s text". */
function sourceInWords(reason: Omit<ReasonInFull, 'source'>): string {
  return [reason.ruleId ?? '', ...reason.cites, reason.confidence].filter((part) => part !== '').join(' · ');
}
