import { missingFacts } from '../logic/missing.ts';
import { type FactKey, factKeys, fieldInfo, type AnyValue } from '../model/fields.ts';
import { type AnyFact } from '../model/fact.ts';
import type { Opening, Project } from '../model/project.ts';
import { answersTo } from './answers.ts';
import { decide, firstFacts } from './decide.ts';
import type { Decision } from './decision.ts';
import { valueIn } from '../logic/slots.ts';
import type { Step } from './ruleBook.ts';
import { signOffInShort, signOffsOf } from './signOff.ts';
import { awaited, itemsAskedFor } from './steps.ts';

/** An opening with one more fact known, as if it had been answered. */
export function answered(
  project: Project,
  opening: Opening,
  key: FactKey,
  value: AnyValue,
): [Project, Opening] {
  const fact: AnyFact = { is: 'known', value };
  if (fieldInfo(key).scope === 'building') {
    return [{ ...project, building: { ...project.building, [key]: fact } }, opening];
  }
  return [project, { ...opening, facts: { ...opening.facts, [key]: fact } }];
}

/** How many steps wait for each unknown fact. */
export type Waiting = ReadonlyMap<FactKey, number>;

/**
 * Facts still unknown on which something waits: first what could change the choice, then what could be asked for,
 * signed or referred. Contradictions are left out: nobody is asked a question only to be caught.
 */
export function openQuestions(decision: Decision): { readonly deciding: Waiting; readonly signing: Waiting } {
  const { steps, facts } = decision.hangsOn;
  const deciding = waitingFor(steps, decision);
  for (const key of facts) deciding.set(key, (deciding.get(key) ?? 0) + 1);
  return { deciding, signing: waitingFor(awaited(decision), decision) };
}

/** How many of these steps wait for each unknown fact. */
export function waitingFor(steps: Iterable<Step>, decision: Decision): Map<FactKey, number> {
  const found = new Map<FactKey, number>();
  for (const step of steps) {
    for (const key of missingFacts(step.clause.when, decision.basis, decision.slots)) {
      found.set(key, (found.get(key) ?? 0) + 1);
    }
  }
  return found;
}

/** What no missing fact may change once all is settled: whether it stands, arrangement, sign-offs, items asked for. */
export function outcome(decision: Decision): string {
  const signOffs = signOffsOf(decision)
    .filter(({ grade }) => grade !== 'note')
    .map((one) => signOffInShort(one, decision));
  return [
    decision.state,
    decision.chosen?.candidate.id ?? '-',
    ...signOffs,
    ...itemsAskedFor(decision).toSorted(),
  ].join('|');
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
): readonly AnyValue[] {
  // What is tried is decided without the building, so it is held against what was.
  const before = outcome(decision.alone);
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

/** Asked before, and nobody could say: it is not asked again, it stays with what is missing. */
export function wasAsked(project: Project, opening: Opening, key: FactKey): boolean {
  return (opening.facts[key] ?? project.building[key])?.is === 'unknown';
}

/** With fewer questions than this left, each answer is tried to find the one that settles most. */
const fewQuestions = 8;

/**
 * The question to ask next until the opening is settled: what is looked at first, then what decides, then what is only
 * asked for or signed. While much is open, the fact on which most reasons wait; near the end, the one after whose
 * average answer the fewest questions remain. Undefined when nothing more that was not yet asked can change the
 * decision.
 */
export function nextToSettle(
  project: Project,
  opening: Opening,
  decision = decide(project, opening),
): FactKey | undefined {
  if (decision.state === 'refused') return undefined;
  const { deciding, signing } = openQuestions(decision);
  const isNew = (key: FactKey) => !wasAsked(project, opening, key);
  if (!decision.chosen && deciding.size > 0) {
    const first = firstFacts.find((key) => isNew(key) && valueIn(decision.slots, key) === undefined);
    if (first) return first;
  }
  for (const waiting of [deciding, signing]) {
    const order = [...waiting]
      .filter(([key]) => isNew(key))
      .toSorted((a, b) => b[1] - a[1])
      .map(([key]) => key);
    const ranked = order.length <= fewQuestions ? byWhatRemains(project, opening, order) : order;
    const found = ranked.find((key) => changingAnswers(project, opening, decision, key).length > 0);
    if (found) return found;
  }
  return undefined;
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
