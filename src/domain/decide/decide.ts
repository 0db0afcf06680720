import { type Candidate, candidateById, candidates, unlawfulReleases } from '../devices/candidates.ts';
import { type Slots, slotOf } from '../logic/compile.ts';
import type { FactValue } from '../model/fields.ts';
import type { Opening, Project, Weights } from '../model/project.ts';
import { type CandidateSet, has, setOf } from './candidateSet.ts';
import { clausesLeft } from './clauseIndex.ts';
import { Decided } from './decided.ts';
import type { Decision, DecisionState } from './decision.ts';
import { type FactView, viewFacts } from './factView.ts';
import { judge, type Judgement } from './judge.ts';
import { type RuleBook, ruleBookFor } from './ruleBook.ts';
import { nearTieTenths, type ScoreFacts } from './score.ts';
import { hasRefusal, type SortedSteps, stepsFor } from './steps.ts';
import { totalsFor } from './totals.ts';

/** One opening decided under its project. Pure: the same facts, basis and weights give the same answer. */
export function decide(project: Project, opening: Opening): Decision {
  const book = ruleBookFor(project.basis, project.amendments);
  const chosen = opening.override === null ? undefined : candidateById(opening.override.candidate);
  return decideFacts(viewFacts(project, opening), book, project.weights, chosen);
}

export function decideAll(project: Project): ReadonlyMap<string, Decision> {
  return new Map(Object.values(project.openings).map((opening) => [opening.id, decide(project, opening)]));
}

/** The same decision from a view of the facts; `override` is what a person chose instead. */
export function decideFacts(
  view: FactView,
  book: RuleBook,
  weights: Weights,
  override?: Candidate,
): Decision {
  const { slots } = view;
  const left = clausesLeft(book.index, slots);
  const judgement = judge(book, slots, left);
  const onlyRow = judgement.rows.length === 1 ? judgement.rows[0] : undefined;
  const facts = scoreFacts(slots, judgement.rejected);
  const totals = totalsFor(facts, onlyRow?.row, weights);
  const { leader, best, second } = rank(judgement, totals, override);
  const steps = stepsFor(leader, book, slots, left);
  const state = stateOf(steps, leader, judgement);
  const shown = state !== 'refused' && state !== 'referred';
  return new Decided(
    { view, book, weights, judgement, facts, totals, steps, best },
    {
      state,
      chosen: shown ? leader : undefined,
      overridden: override,
      runnerUp: second,
      nearTie: leader !== undefined && second !== undefined && isNearTie(totals, leader, second),
    },
  );
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

const scoreSlots = {
  securityNeed: slotOf('securityNeed'),
  traffic: slotOf('traffic'),
  appearance: slotOf('appearance'),
  latch: slotOf('latch'),
  leafMaterial: slotOf('leafMaterial'),
  frameMaterial: slotOf('frameMaterial'),
  frameGrouted: slotOf('frameGrouted'),
  latchProjectionIn: slotOf('latchProjectionIn'),
  wishDelayedEgress: slotOf('wishDelayedEgress'),
  wishControlledEgress: slotOf('wishControlledEgress'),
};

/** A wish that the rules refuse ranks nothing; otherwise any lawful lock would be marked down for it. */
function wishedRelease(slots: Slots, rejected: CandidateSet): 'delayed' | 'controlled' | undefined {
  const wished =
    slots[scoreSlots.wishControlledEgress] === true
      ? 'controlled'
      : slots[scoreSlots.wishDelayedEgress] === true
        ? 'delayed'
        : undefined;
  const granted = candidates.some(({ release, index }) => release === wished && !has(rejected, index));
  return granted ? wished : undefined;
}

function scoreFacts(slots: Slots, rejected: CandidateSet): ScoreFacts {
  return {
    securityNeed: slots[scoreSlots.securityNeed] as FactValue<'securityNeed'> | undefined,
    traffic: slots[scoreSlots.traffic] as FactValue<'traffic'> | undefined,
    appearance: slots[scoreSlots.appearance] as FactValue<'appearance'> | undefined,
    latch: slots[scoreSlots.latch] as FactValue<'latch'>,
    leafMaterial: slots[scoreSlots.leafMaterial] as FactValue<'leafMaterial'>,
    frameMaterial: slots[scoreSlots.frameMaterial] as FactValue<'frameMaterial'>,
    frameGrouted: slots[scoreSlots.frameGrouted] as boolean,
    latchProjectionIn: slots[scoreSlots.latchProjectionIn] as number,
    wishedRelease: wishedRelease(slots, rejected),
  };
}
