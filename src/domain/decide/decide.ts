import { type Candidate, candidateById, candidates, unlawfulReleases } from '../devices/candidates.ts';
import { type Slots, slotCount } from '../logic/compile.ts';
import type { Opening, Project, Weights } from '../model/project.ts';
import { has, setOf } from './candidateSet.ts';
import { answersOf } from './clauseIndex.ts';
import { Decided, Found } from './decided.ts';
import type { Decision, DecisionState } from './decision.ts';
import { type FactView, viewFacts } from './factView.ts';
import { judge, type Judgement } from './judge.ts';
import { type RuleBook, ruleBookFor } from './ruleBook.ts';
import { nearTieTenths } from './score.ts';
import { scoreFacts } from './scoreFacts.ts';
import { hasRefusal, type SortedSteps, stepsFor } from './steps.ts';
import { totalsFor } from './totals.ts';

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
 * holds, and may be used again afterwards.
 */
export function decideFacts(
  view: FactView,
  book: RuleBook,
  weights: Weights,
  override?: Candidate,
  slots: Slots = view.slots,
): Decision {
  const answers = answersOf(book.index, slots);
  const judgement = judge(book, slots, answers);
  const row = judgement.rows.length === 1 ? judgement.rows[0]?.row : undefined;
  const totals = totalsFor(scoreFacts(slots, judgement.rejected), row, weights);
  const { leader, best, second } = rank(judgement, totals.tenths, override);
  const steps = stepsFor(leader, book, answers);
  const state = stateOf(steps, leader, judgement);
  const shown = state !== 'refused' && state !== 'referred';
  return new Decided(new Found(view, book, weights, totals, row, best), steps, {
    state,
    chosen: shown ? leader : undefined,
    overridden: override,
    runnerUp: second,
    nearTie: leader !== undefined && second !== undefined && isNearTie(totals.tenths, leader, second),
  });
}

interface Ranking {
  readonly leader: Candidate | undefined;
  /** The best arrangement that nothing forbids or doubts. */
  readonly best: Candidate | undefined;
  /** The best of the same with another device: the same device in its other fail mode teaches nobody much. */
  readonly second: Candidate | undefined;
}

const neverLeadsOpen = setOf((candidate) => unlawfulReleases.includes(candidate.release));

/**
 * What scores best leads, also while something unknown could still forbid it: the state says so. Taking the best of
 * what is free of doubt instead would put a magnet where only a lever's height was not measured. A release that no
 * code accepts never leads on the chance that the door turns out to be no way out.
 */
function rank(
  { rejected, doubted }: Judgement,
  totals: Int32Array,
  override: Candidate | undefined,
): Ranking {
  let best = -1;
  let bestOpen = -1;
  for (let index = 0; index < candidates.length; index++) {
    if (has(rejected, index)) continue;
    const total = totals[index] as number;
    if (!has(doubted, index)) {
      if (best < 0 || total > (totals[best] as number)) best = index;
    } else if (!has(neverLeadsOpen, index) && (bestOpen < 0 || total > (totals[bestOpen] as number))) {
      bestOpen = index;
    }
  }
  const openLeads = bestOpen >= 0 && (best < 0 || (totals[bestOpen] as number) > (totals[best] as number));
  const leader = override ?? candidates[openLeads ? bestOpen : best];
  let second = -1;
  for (let index = 0; index < candidates.length; index++) {
    if (has(rejected, index) || has(doubted, index)) continue;
    if (candidates[index]?.deviceId === leader?.deviceId) continue;
    if (second < 0 || (totals[index] as number) > (totals[second] as number)) second = index;
  }
  return { leader, best: candidates[best], second: candidates[second] };
}

function isNearTie(totals: Int32Array, leader: Candidate, second: Candidate): boolean {
  return (totals[leader.index] as number) - (totals[second.index] as number) <= nearTieTenths;
}

function stateOf(steps: SortedSteps, leader: Candidate | undefined, judgement: Judgement): DecisionState {
  if (hasRefusal(steps)) return 'refused';
  if (steps.refers.length > 0) return 'referred';
  if (leader === undefined) return 'none';
  const inDoubt = has(judgement.rejected, leader.index) || has(judgement.doubted, leader.index);
  return inDoubt ? 'open' : 'settled';
}
