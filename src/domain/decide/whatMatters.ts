import { missingFacts } from '../logic/missing.ts';
import { type FactKey, factKeys, fieldInfo } from '../model/fields.ts';
import type { Fact } from '../model/fact.ts';
import type { Opening, Project } from '../model/project.ts';
import { answersTo } from './answers.ts';
import { decide } from './decide.ts';
import type { Decision } from './decision.ts';
import type { Step } from './ruleBook.ts';
import { signOffReasons } from './signOff.ts';

type Value = string | number | boolean;

/** Facts that the ranking reads, beside any rule: taste and use first, then what the strength of the lock rests on. */
const rankingFacts: readonly FactKey[] = [
  'securityNeed',
  'traffic',
  'appearance',
  'latch',
  'leafMaterial',
  'frameMaterial',
  'frameGrouted',
  'latchProjectionIn',
];

/** An opening with one more fact known, as if it had been answered. */
export function answered(project: Project, opening: Opening, key: FactKey, value: Value): [Project, Opening] {
  const fact: Fact<Value> = { is: 'known', value };
  if (fieldInfo(key).scope === 'building') {
    return [{ ...project, building: { ...project.building, [key]: fact } }, opening];
  }
  return [project, { ...opening, facts: { ...opening.facts, [key]: fact } }];
}

/** How many steps wait for each unknown fact. */
export type Waiting = ReadonlyMap<FactKey, number>;

/**
 * Facts still unknown on which something waits: first what could outrank or forbid the choice, then what could
 * ask for a reviewer. Contradictions are left out: nobody is asked a question only to be caught.
 */
export function openQuestions(decision: Decision): { readonly deciding: Waiting; readonly signing: Waiting } {
  const leads = decision.chosen?.score.tenths ?? 0;
  const settled = decision.state === 'settled';
  const steps = new Set<Step>();
  for (const one of decision.open) {
    if (settled && one.tenths <= leads) break;
    for (const step of one.because) steps.add(step);
  }
  const signing = decision.depends.filter(
    ({ clause }) => clause.effect === 'refer' || (clause.effect === 'signOff' && clause.grade !== 'note'),
  );
  return { deciding: waitingFor(steps, decision), signing: waitingFor(signing, decision) };
}

function waitingFor(steps: Iterable<Step>, decision: Decision): Waiting {
  const found = new Map<FactKey, number>();
  for (const step of steps) {
    for (const key of missingFacts(step.clause.when, decision.basis, decision.slots)) {
      found.set(key, (found.get(key) ?? 0) + 1);
    }
  }
  return found;
}

/** What of a decision a missing fact may change: recommendation, fail mode, release, sign-off, and whether it stands. */
export function outcome(decision: Decision): string {
  const signOffs = signOffReasons(decision)
    .filter((reason) => reason.grade !== 'note')
    .map((reason) => `${reason.grade} ${reason.ruleId ?? reason.sentence}`);
  return [decision.state, decision.chosen?.candidate.id ?? '-', ...signOffs].join('|');
}

/**
 * Facts somebody was asked for and could not tell, of which at least one answer would change the outcome or let
 * something be settled. An answer that contradicts the survey changes nothing that stands: it is caught when given.
 */
export function couldStillChange(
  project: Project,
  opening: Opening,
  decision = decide(project, opening),
): readonly FactKey[] {
  return factKeys.filter(
    (key) =>
      wasAsked(project, opening, key) &&
      changingAnswers(project, opening, decision, key).some(
        (value) => decide(...answered(project, opening, key, value)).state !== 'refused',
      ),
  );
}

function changingAnswers(
  project: Project,
  opening: Opening,
  decision: Decision,
  key: FactKey,
): readonly Value[] {
  const before = outcome(decision);
  const waits = (one: Decision) => {
    const { deciding, signing } = openQuestions(one);
    return deciding.size + signing.size;
  };
  const waiting = waits(decision);
  return answersTo(key).filter((value) => {
    const after = decide(...answered(project, opening, key, value));
    return outcome(after) !== before || waits(after) < waiting;
  });
}

function isUnknown(decision: Decision, key: FactKey, opening: Opening): boolean {
  const fact = opening.facts[key];
  return (fact === undefined || fact.is === 'unknown') && !decision.assumed.has(key);
}

/** Asked before, and nobody could say: it is not asked again, it stays with what is missing. */
function wasAsked(project: Project, opening: Opening, key: FactKey): boolean {
  return (opening.facts[key] ?? project.building[key])?.is === 'unknown';
}

/** With fewer questions than this left, each answer is tried to find the one that settles most. */
const fewQuestions = 8;

/**
 * The question to ask next: what decides comes before what only asks for a reviewer. While much is open, the fact
 * on which most reasons wait; near the end, the one after whose average answer the fewest questions remain.
 * Undefined when nothing more that was not yet asked can change the decision.
 */
export function nextQuestion(
  project: Project,
  opening: Opening,
  decision = decide(project, opening),
): FactKey | undefined {
  const { deciding, signing } = openQuestions(decision);
  for (const waiting of [deciding, signing]) {
    const order = [...waiting]
      .filter(([key]) => !wasAsked(project, opening, key))
      .toSorted((a, b) => b[1] - a[1])
      .map(([key]) => key);
    const ranked = order.length <= fewQuestions ? byWhatRemains(project, opening, order) : order;
    const found = ranked.find((key) => changingAnswers(project, opening, decision, key).length > 0);
    if (found) return found;
  }
  return rankingFacts.find(
    (key) =>
      isUnknown(decision, key, opening) &&
      !wasAsked(project, opening, key) &&
      changingAnswers(project, opening, decision, key).length > 0,
  );
}

function byWhatRemains(project: Project, opening: Opening, keys: readonly FactKey[]): readonly FactKey[] {
  const left = new Map<FactKey, number>();
  for (const key of keys) {
    const answers = answersTo(key);
    let sum = 0;
    for (const value of answers) {
      const after = openQuestions(decide(...answered(project, opening, key, value)));
      sum += after.deciding.size + after.signing.size;
    }
    left.set(key, sum / answers.length);
  }
  return keys.toSorted((a, b) => (left.get(a) ?? 0) - (left.get(b) ?? 0));
}
