import { type Candidate, candidateById, freeReleases, unlawfulReleases } from '../devices/candidates.ts';
import { slotOf, valueIn } from '../logic/slots.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { type Change, onSwingingLeaf, possibleChanges } from '../hardware/changes.ts';
import { decide } from './decide.ts';
import type { Decision } from './decision.ts';
import { type Step, surveyedFacts } from './ruleBook.ts';
import { isFromPlan, planBehind } from './factView.ts';
import { answered } from './whatMatters.ts';

/** The smallest work that admits an arrangement which is ruled out now. */
export interface Admission {
  readonly candidate: Candidate;
  readonly changes: readonly Change[];
}

export type Search =
  | { readonly found: true; readonly changes: readonly Change[] }
  /** Nothing up to the bound admits it: the location, the use or the code rules it out. */
  | { readonly found: false; readonly tried: number; readonly plan: readonly PlanSays[] };

/** A fact that the plan gives: no answer at the opening changes it, only another plan. */
export interface PlanSays {
  readonly fact: FactKey;
  /** What in the plan it stands on. */
  readonly from: string;
}

/** More changes than this at one door is another door. */
export const mostChanges = 3;
/** Decisions tried before the search gives up, so that a screen never waits long. */
const mostTries = 4000;

/**
 * Fewest changes first, and among equally many the least work. Only facts that the rejection reads are changed,
 * and each change must be work somebody can do. Admitted means: no longer forbidden, and no answer missing.
 */
function smallestChange(
  project: Project,
  opening: Opening,
  decision: Decision,
  candidate: Candidate,
): Search {
  const because = decision.rejected.find((one) => one.candidate === candidate)?.because ?? [];
  const reads = because.map((step) => new Set<FactKey>(surveyedFacts(step.clause.when)));
  const swings = decision.slots[slotOf('isSwinging')] !== false;
  const useful = possibleChanges.filter(
    ({ fact, value, from }) =>
      reads.some((facts) => facts.has(fact)) &&
      // The plan overrules what would be entered here.
      !isFromPlan(decision.assumed.get(fact)) &&
      valueIn(decision.slots, fact) !== value &&
      (from === undefined || valueIn(decision.slots, fact) === from) &&
      (swings || !onSwingingLeaf.has(fact)),
  );
  // What forbids goes on forbidding until a fact it reads is another.
  const touchesAll = (changes: readonly Change[]) =>
    reads.every((facts) => changes.some((one) => facts.has(one.fact)));
  const before = contradictionsOf(decision);
  let tried = 0;
  const plan = planBehindRejection(decision, because);
  if (!touchesAll(useful)) return { found: false, tried, plan };
  for (let size = 1; size <= mostChanges; size++) {
    const sets = combinations(useful, size)
      .filter(touchesAll)
      .toSorted((a, b) => effortOf(a) - effortOf(b));
    for (const changes of sets) {
      if (tried++ >= mostTries) return { found: false, tried, plan };
      if (stands(after(project, opening, changes, candidate), before)) return { found: true, changes };
    }
  }
  return { found: false, tried, plan };
}

/** Work that makes the survey contradict itself cannot be done: a push bar on a sliding leaf, say. */
function stands(decision: Decision, contradictionsBefore: ReadonlySet<string>): boolean {
  return decision.stands && [...contradictionsOf(decision)].every((id) => contradictionsBefore.has(id));
}

function contradictionsOf(decision: Decision): ReadonlySet<string> {
  const found = decision.findings.filter((step) => step.rule.family === 'contradictions');
  return new Set(found.map((step) => step.rule.id));
}

/** The decision once the work is done and the candidate is taken: it stands only where nothing forbids or doubts it. */
function after(
  project: Project,
  opening: Opening,
  changes: readonly Change[],
  candidate: Candidate,
): Decision {
  const override = { candidate: candidate.id, reason: '', by: '', at: '' };
  let changed: [Project, Opening] = [project, { ...opening, override }];
  for (const one of changes) {
    for (const [fact, value] of Object.entries({ [one.fact]: one.value, ...one.also })) {
      changed = answered(...changed, fact as FactKey, value);
    }
  }
  return decide(...changed);
}

function effortOf(changes: readonly Change[]): number {
  return changes.reduce((sum, one) => sum + one.effort, 0);
}

/** Sets of changes of one size, never two values for one fact. */
function combinations(from: readonly Change[], size: number): Change[][] {
  if (size === 0) return [[]];
  return from.flatMap((first, index) =>
    combinations(from.slice(index + 1), size - 1)
      .filter((rest) => rest.every((one) => one.fact !== first.fact))
      .map((rest) => [first, ...rest]),
  );
}

/** Work after which an arrangement stands at an opening where no hardware works today. */
export interface WayForward extends Admission {
  readonly effort: number;
  /** Points of the arrangement once the work is done, in tenths. */
  readonly tenths: number;
}

/**
 * The smallest sets of changes that let anything lawful stand here: fewest changes first, then least work, then
 * most points; what lets people out freely comes before what holds them. Empty means that nothing within the bound
 * helps.
 */
export function waysForward(
  project: Project,
  opening: Opening,
  decision: Decision,
  most = 3,
): readonly WayForward[] {
  const ruledOut = decision.rejected.map((one) => one.candidate);
  const free = ruledOut.filter((one) => freeReleases.includes(one.release));
  const held = ruledOut.filter(
    (one) => !freeReleases.includes(one.release) && !unlawfulReleases.includes(one.release),
  );
  const ways: WayForward[] = [];
  for (const candidates of [free, held]) {
    for (const way of waysAmong(project, opening, decision, candidates)) {
      if (ways.length >= most) return ways;
      // More work than a way already named tells nobody how little is enough.
      if (!ways.some((one) => one.changes.every((change) => way.changes.includes(change)))) ways.push(way);
    }
  }
  return ways;
}

function waysAmong(
  project: Project,
  opening: Opening,
  decision: Decision,
  candidates: readonly Candidate[],
): readonly WayForward[] {
  const best = new Map<string, WayForward>();
  for (const candidate of candidates) {
    const search = smallestChange(project, opening, decision, candidate);
    if (!search.found) continue;
    const { changes } = search;
    const tenths = after(project, opening, changes, candidate).chosen?.score.tenths ?? 0;
    const key = changes.map((one) => `${one.fact}=${one.value}`).join();
    if (tenths <= (best.get(key)?.tenths ?? -1)) continue;
    best.set(key, { candidate, changes, effort: effortOf(changes), tenths });
  }
  return [...best.values()].toSorted(
    (a, b) => a.changes.length - b.changes.length || a.effort - b.effort || b.tenths - a.tenths,
  );
}

/** Facts of the rejection that work could change and the plan gives: another plan comes first. */
export function planBehindRejection(decision: Decision, because: readonly Step[]): readonly PlanSays[] {
  const read = new Set<FactKey>(because.flatMap((step) => surveyedFacts(step.clause.when)));
  return [...new Set(possibleChanges.map(({ fact }) => fact))].flatMap((fact) => {
    const from = planBehind(decision.assumed.get(fact));
    return read.has(fact) && from !== undefined ? [{ fact, from }] : [];
  });
}

/** The same search by the candidate's id; a candidate that is not ruled out needs no change. */
export function searchFor(
  project: Project,
  opening: Opening,
  decision: Decision,
  candidateId: string,
): Search {
  const candidate = candidateById(candidateId);
  return candidate
    ? smallestChange(project, opening, decision, candidate)
    : { found: false, tried: 0, plan: [] };
}
