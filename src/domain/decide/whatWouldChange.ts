import { type Candidate, candidateById, freeReleases, unlawfulReleases } from '../devices/candidates.ts';
import { type Trade, trades } from '../devices/items.ts';
import { slotOf, valueIn } from '../logic/slots.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { midSentence } from '../text/midSentence.ts';
import { type Change, onSwingingLeaf, possibleChanges } from './changes.ts';
import { decide } from './decide.ts';
import type { Decision } from './decision.ts';
import { type Step, surveyedFacts } from './ruleBook.ts';
import { isFromPlan, planBehind } from './factView.ts';
import { answered } from './whatMatters.ts';
import { candidateInWords, releaseInWords } from './words.ts';

/** The smallest work that admits an arrangement which is ruled out now. */
export interface Admission {
  readonly candidate: Candidate;
  readonly changes: readonly Change[];
}

export type Search =
  | { readonly found: true; readonly changes: readonly Change[] }
  /** Nothing up to the bound admits it: the location, the use or the code rules it out. */
  | { readonly found: false; readonly tried: number; readonly plan: string };

/** More changes than this at one door is another door. */
const mostChanges = 3;
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
  const plan = planWouldHaveToChange(decision, because);
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

/** A way forward in words, the work by trade. */
export interface WayWords {
  readonly candidateId: string;
  readonly name: string;
  readonly work: readonly { readonly trade: string; readonly lines: readonly string[] }[];
}

export function wayInWords({ candidate, changes }: WayForward): WayWords {
  return {
    candidateId: candidate.id,
    name: `${candidateInWords(candidate)} · ${releaseInWords(candidate)}`,
    work: (Object.keys(trades) as Trade[]).flatMap((trade) => {
      const lines = changes.filter((one) => one.trade === trade).map((one) => one.says);
      return lines.length > 0 ? [{ trade: trades[trade], lines }] : [];
    }),
  };
}

/** Facts of the rejection that the plan gives: no answer at the opening changes them, only another plan. */
function planWouldHaveToChange(decision: Decision, because: readonly Step[]): string {
  const read = new Set<FactKey>(because.flatMap((step) => surveyedFacts(step.clause.when)));
  const told = possibleChanges.flatMap(({ fact }) => {
    const from = planBehind(decision.assumed.get(fact));
    return read.has(fact) && from !== undefined ? [`${midSentence(fieldInfo(fact).label)} (${from})`] : [];
  });
  const once = [...new Set(told)];
  return once.length === 0 ? '' : ` The plan would have to change first: ${once.join('; ')}.`;
}

/** Said where `waysForward` finds nothing. */
export function noWayForward(decision: Decision): string {
  const because = decision.rejected.flatMap((one) => one.because);
  return `${nothingHelps}${planWouldHaveToChange(decision, because)}`;
}
const nothingHelps = `No ${mostChanges} physical changes would let the rules here allow anything: the location, the use or the code rules it out. Take it to a reviewer.`;

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
    : { found: false, tried: 0, plan: '' };
}

/** The work as lines for the trades, or one line saying that no work up to the bound helps. */
export function admissionInWords(search: Search): readonly string[] {
  if (search.found) return search.changes.map((one) => `${trades[one.trade]}: ${one.says}`);
  const tried = search.tried > 0 ? ` (${search.tried} combinations tried)` : '';
  return [
    `No ${mostChanges} physical changes would allow it${tried}: the location, the use or the code rules it out.${search.plan}`,
  ];
}
