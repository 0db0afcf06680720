import { missingFacts } from '../logic/missing.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Fact, Facts } from '../model/fact.ts';
import type { Opening, Project } from '../model/project.ts';
import { answersTo } from './answers.ts';
import { decide } from './decide.ts';
import type { Decision } from './decision.ts';
import { signOffReasons } from './signOff.ts';

type Value = string | number | boolean;

/** Facts of taste and use that only the ranking reads. */
const rankingFacts: readonly FactKey[] = ['securityNeed', 'traffic', 'appearance'];

/** An opening with one more fact known, as if it had been answered. */
export function answered(project: Project, opening: Opening, key: FactKey, value: Value): [Project, Opening] {
  const fact: Fact<Value> = { is: 'known', value };
  if (fieldInfo(key).scope === 'building') {
    return [{ ...project, building: { ...project.building, [key]: fact } as Facts }, opening];
  }
  return [project, { ...opening, facts: { ...opening.facts, [key]: fact } as Facts }];
}

/**
 * Facts still unknown on which something waits: an arrangement that would outrank the choice, a sign-off, a
 * referral. Contradictions are left out: nobody is asked a question only to be caught.
 */
export function openQuestions(decision: Decision): readonly FactKey[] {
  const found = new Set<FactKey>();
  const leads = decision.chosen?.score.tenths ?? 0;
  const chosenIsClear = decision.state === 'settled';
  for (const one of decision.open) {
    if (chosenIsClear && one.tenths <= leads) break;
    for (const step of one.because) missingFacts(step.clause.when, decision.basis, decision.slots, found);
  }
  for (const step of decision.depends) {
    const { clause } = step;
    const weighs = clause.effect === 'refer' || (clause.effect === 'signOff' && clause.grade !== 'note');
    if (weighs) missingFacts(clause.when, decision.basis, decision.slots, found);
  }
  return [...found];
}

/** What of a decision a missing fact may change: recommendation, fail mode, release, sign-off, and whether it stands. */
export function outcome(decision: Decision): string {
  const signOffs = signOffReasons(decision)
    .filter((reason) => reason.grade !== 'note')
    .map((reason) => `${reason.grade} ${reason.ruleId ?? reason.sentence}`);
  return [decision.state, decision.chosen?.candidate.id ?? '-', ...signOffs].join('|');
}

export interface MissingFact {
  readonly key: FactKey;
  /** Answers after which the decision would differ from today's. */
  readonly changing: readonly Value[];
}

/**
 * The unknown facts of which at least one answer changes the outcome or lets something be settled. The rest
 * cannot matter and is not asked.
 */
export function factsThatMatter(
  project: Project,
  opening: Opening,
  decision = decide(project, opening),
): readonly MissingFact[] {
  const before = outcome(decision);
  const waiting = openQuestions(decision);
  const waitingBefore = waiting.length;
  const keys = [...new Set([...waiting, ...rankingFacts.filter((key) => isUnknown(decision, key, opening))])];
  const mattering: MissingFact[] = [];
  for (const key of keys) {
    const changing = answersTo(key).filter((value) => {
      const after = decide(...answered(project, opening, key, value));
      return (
        outcome(after) !== before || (waiting.includes(key) && openQuestions(after).length < waitingBefore)
      );
    });
    if (changing.length > 0) mattering.push({ key, changing });
  }
  return mattering;
}

function isUnknown(decision: Decision, key: FactKey, opening: Opening): boolean {
  const fact = opening.facts[key];
  return (fact === undefined || fact.is === 'unknown') && !decision.assumed.has(key);
}

/**
 * The question that settles most: after an average answer to it the fewest questions remain. Ties go to the
 * order of the survey. Undefined when nothing more can change the decision.
 */
export function nextQuestion(
  project: Project,
  opening: Opening,
  decision = decide(project, opening),
): FactKey | undefined {
  let best: { key: FactKey; left: number } | undefined;
  for (const { key } of factsThatMatter(project, opening, decision)) {
    const answers = answersTo(key);
    let left = 0;
    for (const value of answers)
      left += openQuestions(decide(...answered(project, opening, key, value))).length;
    left /= answers.length;
    if (!best || left < best.left) best = { key, left };
  }
  return best?.key;
}
