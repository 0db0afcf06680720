import { type Candidate, candidateById, candidates, unlawfulReleases } from '../devices/candidates.ts';
import { fitCell, type FitRow } from '../fit/matrix.ts';
import { type Slots, slotCount, slotOf } from '../logic/slots.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project, Weights } from '../model/project.ts';
import { add, type CandidateSet, emptySet, has, setOf } from './candidateSet.ts';
import { type Answers, answersOf } from './clauseIndex.ts';
import { mayLoseItsPlace } from './challengers.ts';
import { Decided, Found } from './decided.ts';
import type { Recommending, Decision, DecisionState, PassedOver, SevereFinding } from './decision.ts';
import { type FactView, viewFacts } from './factView.ts';
import { judge, type Judgment } from './judge.ts';
import { isLeftAlone, stepsOfLeftAlone } from './leftAlone.ts';
import { type RuleBook, ruleBookFor } from './ruleBook.ts';
import { comesBefore } from './outrank.ts';
import { nearTieTenths } from './score.ts';
import { scoreFacts } from './scoreFacts.ts';
import { awaited, hasRefusal, type SortedSteps, stepsFor } from './steps.ts';
import { type Totals, totalsFor } from './totals.ts';
import { severeOf } from './whatHappens.ts';

/** What the opening being decided reads; the next one writes over it. */
const slotsInUse: Slots = new Array<Slots[number]>(slotCount).fill(undefined);

/** One opening decided under its project. Pure: the same facts, basis and weights give the same answer. */
export function decide(project: Project, opening: Opening): Decision {
  const book = ruleBookFor(project.basis, project.amendments);
  const chosen = opening.override === null ? undefined : candidateById(opening.override.candidate);
  const view = viewFacts(project, opening);
  return decideFacts(view, book, project.weights, chosen, view.readInto(slotsInUse));
}

export function decideAll(project: Project): ReadonlyMap<string, Decision> {
  return new Map(Object.values(project.openings).map((opening) => [opening.id, decide(project, opening)]));
}

/**
 * The same decision from a view of the facts; `override` is what a person chose instead. `slots` hold what the view
 * holds, and may be used again afterward.
 */
export function decideFacts(
  view: FactView,
  book: RuleBook,
  weights: Weights,
  override?: Candidate,
  slots: Slots = view.slots,
): Decision {
  const answers = answersOf(book.index, slots);
  const judgment = judge(book, slots, answers);
  const row = judgment.rows.length === 1 ? judgment.rows[0]?.row : undefined;
  const totals = totalsFor(scoreFacts(slots, judgment.rejected), row, weights);
  const barred = emptySet();
  if (override === undefined && isLeftAlone(slots))
    return leftAsItIs(view, book, weights, totals, row, answers);
  const passedOver: PassedOver[] = [];
  let led = lead(barred);
  const first = led;
  // What ends badly does not lead while something else is left; where nothing is, the best is shown with what happens.
  while (led.leader && led.severe.length > 0 && led.leader !== override) {
    passedOver.push({ candidate: led.leader, severe: led.severe });
    add(barred, led.leader.index);
    led = lead(barred);
  }
  if (first.leader && !led.leader) {
    led = first;
    barred.fill(0);
    passedOver.length = 0;
  }
  const { ranking, leader, steps, severe } = led;
  const second = leader && ranking.second;
  const found = new Found(view, book, weights, totals, row, ranking.best, leader, barred);
  const mayLosePlace = () =>
    leader === undefined ||
    (override === undefined && mayLoseItsPlace({ leader, judgment, barred, totals, weights, slots }));
  const state = stateOf(led, judgment, mayLosePlace);
  const shown = state !== 'refused' && state !== 'referred';
  const stands = shown && leader !== undefined && severe.length === 0 && isFree(judgment, leader);
  return new Decided(found, steps, {
    state,
    stands,
    chosen: shown ? leader : undefined,
    overridden: override,
    runnerUp: second,
    nearTie: leader !== undefined && second !== undefined && isNearTie(totals.tenths, leader, second),
    severe: shown ? severe : [],
    passedOver: shown ? passedOver : [],
  });

  /** What comes first but for what was passed over, with what the rules say of it and what happens under it. */
  function lead(without: CandidateSet): Led {
    const ranking = rank(judgment, totals.tenths, override, without);
    const surveyed = isSurveyed(slots, judgment);
    const leader = override ?? (surveyed ? ranking.first : undefined);
    const steps = stepsFor(leader ?? (surveyed ? 'noneLeft' : undefined), book, answers);
    const judged = leader !== undefined && !hasRefusal(steps) && steps.refers.length === 0;
    if (!judged) return { ranking, leader, steps, severe: [] };
    const chosen = { candidate: leader, cell: row && fitCell(row, leader.deviceId) };
    return {
      ranking,
      leader,
      steps,
      severe: severeForSure({ chosen, slots, requires: steps.requires }, steps),
    };
  }

  /**
   * What ends badly only until a part comes that a missing fact may yet ask for is no reason to pass anything over: the
   * fact is asked, and until then nothing is settled.
   */
  function severeForSure(arranged: Recommending, steps: SortedSteps): readonly SevereFinding[] {
    const severe = severeOf(arranged, book.basis);
    if (severe.length === 0) return severe;
    const mayCome = awaited(steps).filter(({ clause }) => clause.effect === 'require');
    if (mayCome.length === 0) return severe;
    const withAll = { ...arranged, requires: [...arranged.requires, ...mayCome] };
    return severeOf(withAll, book.basis).length === 0 ? [] : severe;
  }
}

/** Nobody wants anything here: what is said of the opening stays, and whether its lock lets people out is asked. */
function leftAsItIs(
  view: FactView,
  book: RuleBook,
  weights: Weights,
  totals: Totals,
  row: FitRow | undefined,
  answers: Answers,
): Decision {
  const said = stepsFor(undefined, book, answers);
  const found = new Found(view, book, weights, totals, row, undefined, undefined, emptySet());
  return new Decided(found, stepsOfLeftAlone(said), {
    state: hasRefusal(said) ? 'refused' : 'left',
    stands: false,
    chosen: undefined,
    overridden: undefined,
    runnerUp: undefined,
    nearTie: false,
    severe: [],
    passedOver: [],
  });
}

interface Led {
  readonly ranking: Ranking;
  readonly leader: Candidate | undefined;
  readonly steps: SortedSteps;
  readonly severe: readonly SevereFinding[];
}

/** Before these are known nothing is recommended: what is named at a door nobody has looked at is a guess. */
export const firstFacts = ['doorType', 'leafMaterial', 'latch'] as const satisfies readonly FactKey[];
const firstSlots = firstFacts.map(slotOf);
const swingingSlot = slotOf('isSwinging');

/** A turnstile or a sliding door comes as one piece with its leaf and lock: its kind says what goes in. */
function isSurveyed(slots: Slots, { rows }: Judgment): boolean {
  return (
    firstSlots.every((slot) => slots[slot] !== undefined) ||
    (slots[swingingSlot] === false && rows.length <= 1)
  );
}

interface Ranking {
  /** The best of what is not ruled out, doubted or not. */
  readonly first: Candidate | undefined;
  /** The best arrangement that nothing forbids or doubts. */
  readonly best: Candidate | undefined;
  /**
   * The best of what is not ruled out with another device: the same device in its other fail mode teaches nobody much.
   * It may be in doubt, as what leads may; whoever shows it says so.
   */
  readonly second: Candidate | undefined;
}

const neverLeadsOpen = setOf((candidate) => unlawfulReleases.includes(candidate.release));

/**
 * What scores best leads, also while something unknown could still forbid it: the state says so. Taking the best of
 * what is free of doubt instead would put a magnet where only a lever's height was not measured. A release that no
 * code accepts never leads on the chance that the door turns out to be no way out.
 */
function rank(
  { rejected, doubted }: Judgment,
  totals: Int32Array,
  override: Candidate | undefined,
  barred: CandidateSet,
): Ranking {
  let best = -1;
  let first = -1;
  for (let index = 0; index < candidates.length; index++) {
    if (has(rejected, index) || has(barred, index)) continue;
    const inDoubt = has(doubted, index);
    if (inDoubt && has(neverLeadsOpen, index)) continue;
    if (!inDoubt && (best < 0 || comesBefore(totals, index, best))) best = index;
    if (first < 0 || comesBefore(totals, index, first)) first = index;
  }
  const leader = override ?? candidates[first];
  let second = -1;
  for (let index = 0; index < candidates.length; index++) {
    if (has(rejected, index) || has(barred, index)) continue;
    if (candidates[index]?.deviceId === leader?.deviceId) continue;
    if (has(doubted, index) && has(neverLeadsOpen, index)) continue;
    if (second < 0 || comesBefore(totals, index, second)) second = index;
  }
  return { first: candidates[first], best: candidates[best], second: candidates[second] };
}

function isNearTie(totals: Int32Array, leader: Candidate, second: Candidate): boolean {
  return (totals[leader.index] as number) - (totals[second.index] as number) <= nearTieTenths;
}

/** Neither ruled out nor in doubt. */
function isFree({ rejected, doubted }: Judgment, { index }: Candidate): boolean {
  return !has(rejected, index) && !has(doubted, index);
}

/**
 * Settled is what no answer can take back, given one by one or together: the arrangement stands, nothing else may come
 * before it, and nothing more may be asked for or signed. A person's own choice waits for no other arrangement.
 */
function stateOf(
  { steps, leader, severe, ranking }: Led,
  judgment: Judgment,
  mayLosePlace: () => boolean,
): DecisionState {
  if (hasRefusal(steps)) return 'refused';
  if (steps.refers.length > 0) return 'referred';
  const first = leader ?? ranking.first;
  if (first === undefined) return 'none';
  if (severe.length > 0) return 'severe';
  return !isFree(judgment, first) || awaited(steps).length > 0 || mayLosePlace() ? 'open' : 'settled';
}
