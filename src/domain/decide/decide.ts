import { type Candidate, candidateById, candidates, unlawfulReleases } from '../devices/candidates.ts';
import { type Cell, fitCell, neverOnRatedDoor } from '../fit/matrix.ts';
import { type Slots, slotOf } from '../logic/compile.ts';
import { NO, UNKNOWN, YES } from '../logic/verdict.ts';
import type { FactValue } from '../model/fields.ts';
import type { Opening, Project, Weights } from '../model/project.ts';
import { emptySet, has, include, setOf } from './candidateSet.ts';
import type { Choice, Decision, DecisionState, OpenCandidate, Rejection } from './decision.ts';
import { type FactView, viewFacts } from './factView.ts';
import {
  factWords,
  type ReadyClause,
  type ReadyRow,
  type RuleBook,
  ruleBookFor,
  type Step,
} from './ruleBook.ts';
import { nearTieTenths, score, type ScoreFacts, scoreAll } from './score.ts';

/** One opening decided under its project. Pure: the same facts, basis and weights give the same answer. */
export function decide(project: Project, opening: Opening): Decision {
  const book = ruleBookFor(project.basis, project.amendments);
  const chosen = opening.override === null ? undefined : candidateById(opening.override.candidate);
  return decideFacts(viewFacts(project, opening), book, project.weights, chosen);
}

export function decideAll(project: Project): ReadonlyMap<string, Decision> {
  return new Map(Object.values(project.openings).map((opening) => [opening.id, decide(project, opening)]));
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
const ratedSlot = slotOf('fireRated');
const notOnRated = setOf((candidate) => neverOnRatedDoor.includes(candidate.deviceId));

/** The same decision from a view of the facts; `override` is what a person chose instead. */
export function decideFacts(
  view: FactView,
  book: RuleBook,
  weights: Weights,
  override?: Candidate,
): Decision {
  const { slots } = view;
  const relied = new Uint32Array(factWords);
  const rejected = emptySet();
  const doubted = emptySet();

  const sureProhibits: ReadyClause[] = [];
  const unsureProhibits: ReadyClause[] = [];
  for (const ready of book.prohibits) {
    const verdict = ready.test(slots);
    if (verdict === NO) continue;
    if (verdict === YES) {
      include(rejected, ready.speaksOf);
      sureProhibits.push(ready);
      for (let word = 0; word < factWords; word++)
        relied[word] = (relied[word] as number) | (ready.reads[word] as number);
    } else {
      include(doubted, ready.speaksOf);
      unsureProhibits.push(ready);
    }
  }

  const rows = possibleRows(book.rows, slots);
  const fit = judgeFit(rows, slots);
  for (const ready of rows) {
    for (let word = 0; word < factWords; word++)
      relied[word] = (relied[word] as number) | (ready.reads[word] as number);
  }
  include(rejected, fit.impossible);
  include(doubted, fit.doubted);

  const onlyRow = rows.length === 1 ? rows[0] : undefined;
  const cellOf = (candidate: Candidate): Cell | undefined =>
    onlyRow && fitCell(onlyRow.row, candidate.deviceId);
  const facts = scoreFacts(slots);
  const totals = new Int32Array(candidates.length);
  scoreAll(facts, cellOf, weights, totals);

  const rejections: Rejection[] = [];
  let lost: { rejection: Rejection; tenths: number } | undefined;
  const openOnes: OpenCandidate[] = [];
  let best: { candidate: Candidate; tenths: number } | undefined;
  const clear: { candidate: Candidate; tenths: number }[] = [];
  for (const candidate of candidates) {
    if (has(rejected, candidate.index)) {
      const rejection = {
        candidate,
        because: whyRejected(candidate, sureProhibits, fit.impossible, rows, fit.ratedStep),
      };
      rejections.push(rejection);
      // What cannot go into the door at all would never have led.
      if (!has(fit.impossible, candidate.index)) {
        const tenths = totals[candidate.index] as number;
        if (!lost || tenths > lost.tenths) lost = { rejection, tenths };
      }
      continue;
    }
    const tenths = totals[candidate.index] as number;
    if (has(doubted, candidate.index)) {
      openOnes.push({ candidate, because: whyOpen(candidate, unsureProhibits, fit.doubted, rows), tenths });
    } else {
      clear.push({ candidate, tenths });
      if (!best || tenths > best.tenths) best = { candidate, tenths };
    }
  }
  openOnes.sort((a, b) => b.tenths - a.tenths || a.candidate.index - b.candidate.index);

  // What scores best leads, also while something unknown could still forbid it: the state says so. Taking the best
  // of what is free of doubt instead would put a magnet where only a lever's height was not measured.
  // A release that no code accepts never leads on the chance that the door turns out to be no way out.
  const doubtful = openOnes.find((one) => !unlawfulReleases.includes(one.candidate.release));
  const leadsOpen = doubtful !== undefined && (best === undefined || doubtful.tenths > best.tenths);
  const leader = override ?? (leadsOpen ? doubtful.candidate : best?.candidate);
  const steps = stepsFor(leader, book.others, slots, relied);
  const choice = (candidate: Candidate): Choice => {
    const cell = cellOf(candidate);
    return { candidate, cell, score: score(candidate, facts, cell, weights) };
  };
  const chosen = leader ? choice(leader) : null;
  const second = runnerUp(clear, leader);
  const state = stateOf(steps, leader, rejected, doubted);

  return {
    state,
    basis: book.basis,
    slots,
    assumed: view.assumed,
    chosen: state === 'refused' || state === 'referred' ? null : chosen,
    overridden: override ?? null,
    runnerUp: second ? choice(second) : null,
    nearTie: chosen !== null && second !== undefined && nearTie(clear, leader, second),
    rejected: rejections,
    wouldHaveLed: lost && best && lost.tenths > best.tenths ? lost.rejection : null,
    open: openOnes,
    rows: rows.map((ready) => ready.row),
    ...steps,
    relied,
  };
}

/** The one row that surely fits the survey, or all that nothing known excludes. */
function possibleRows(all: readonly ReadyRow[], slots: Slots): readonly ReadyRow[] {
  const maybe: ReadyRow[] = [];
  for (const ready of all) {
    const verdict = ready.test(slots);
    if (verdict === YES) return [ready];
    if (verdict === UNKNOWN) maybe.push(ready);
  }
  return maybe;
}

function judgeFit(rows: readonly ReadyRow[], slots: Slots) {
  const impossible = emptySet();
  const doubted = emptySet();
  if (rows.length === 0) {
    // No row at all: the pairing is outside the table, so every device but the mechanical ones must be asked about.
    include(doubted, everyWired);
    return { impossible, doubted, ratedStep: false };
  }
  impossible.fill(0xffffffff);
  for (const ready of rows) {
    for (let word = 0; word < impossible.length; word++) {
      impossible[word] = (impossible[word] as number) & (ready.impossible[word] as number);
    }
    include(doubted, ready.impossible);
    include(doubted, ready.doubtful);
  }
  const rated = slots[ratedSlot];
  if (rated === true) include(impossible, notOnRated);
  else if (rated === undefined) include(doubted, notOnRated);
  return { impossible, doubted, ratedStep: rated === true };
}
const everyWired = setOf((candidate) => candidate.device.wired || candidate.device.family === 'battery');

function whyRejected(
  candidate: Candidate,
  prohibits: readonly ReadyClause[],
  impossible: Uint32Array,
  rows: readonly ReadyRow[],
  rated: boolean,
): readonly Step[] {
  const because: Step[] = [];
  for (const ready of prohibits) if (has(ready.speaksOf, candidate.index)) because.push(ready.yes);
  if (has(impossible, candidate.index)) {
    for (const ready of rows) if (has(ready.impossible, candidate.index)) because.push(ready.step);
    if (because.length === 0 && rated) for (const ready of rows) because.push(ready.ratedStep);
  }
  return because;
}

function whyOpen(
  candidate: Candidate,
  prohibits: readonly ReadyClause[],
  doubted: Uint32Array,
  rows: readonly ReadyRow[],
): readonly Step[] {
  const because: Step[] = [];
  for (const ready of prohibits) if (has(ready.speaksOf, candidate.index)) because.push(ready.unknown);
  if (has(doubted, candidate.index)) {
    for (const ready of rows) {
      if (has(ready.impossible, candidate.index) || has(ready.doubtful, candidate.index))
        because.push(ready.unsureStep);
    }
  }
  return because;
}

interface Sorted {
  requires: Step[];
  modifies: Step[];
  signOffs: Step[];
  cautions: Step[];
  permits: Step[];
  findings: Step[];
  refers: Step[];
  depends: Step[];
}

function stepsFor(
  leader: Candidate | undefined,
  clauses: readonly ReadyClause[],
  slots: Slots,
  relied: Uint32Array,
): Sorted {
  const sorted: Sorted = {
    requires: [],
    modifies: [],
    signOffs: [],
    cautions: [],
    permits: [],
    findings: [],
    refers: [],
    depends: [],
  };
  for (const ready of clauses) {
    // A clause about some candidates is heard only for the one that leads; one without `of` always.
    if (ready.clause.of !== undefined && (leader === undefined || !has(ready.speaksOf, leader.index)))
      continue;
    const verdict = ready.test(slots);
    if (verdict === NO) continue;
    if (verdict === UNKNOWN) {
      sorted.depends.push(ready.unknown);
      continue;
    }
    for (let word = 0; word < factWords; word++)
      relied[word] = (relied[word] as number) | (ready.reads[word] as number);
    switch (ready.clause.effect) {
      case 'require':
        sorted.requires.push(ready.yes);
        break;
      case 'modify':
        sorted.modifies.push(ready.yes);
        break;
      case 'signOff':
        sorted.signOffs.push(ready.yes);
        break;
      case 'caution':
        sorted.cautions.push(ready.yes);
        break;
      case 'permit':
        sorted.permits.push(ready.yes);
        break;
      case 'finding':
        sorted.findings.push(ready.yes);
        break;
      case 'refer':
        sorted.refers.push(ready.yes);
        break;
      case 'prohibit':
        break;
    }
  }
  return sorted;
}

/** The best arrangement with another device: the same device in its other fail mode teaches nobody much. */
function runnerUp(
  clear: readonly { candidate: Candidate; tenths: number }[],
  leader: Candidate | undefined,
): Candidate | undefined {
  let second: { candidate: Candidate; tenths: number } | undefined;
  for (const one of clear) {
    if (one.candidate.deviceId === leader?.deviceId) continue;
    if (!second || one.tenths > second.tenths) second = one;
  }
  return second?.candidate;
}

function nearTie(
  clear: readonly { candidate: Candidate; tenths: number }[],
  leader: Candidate | undefined,
  second: Candidate,
): boolean {
  const tenthsOf = (candidate: Candidate | undefined) =>
    clear.find((one) => one.candidate === candidate)?.tenths;
  const [first, next] = [tenthsOf(leader), tenthsOf(second)];
  return first !== undefined && next !== undefined && first - next <= nearTieTenths;
}

function stateOf(
  steps: Sorted,
  leader: Candidate | undefined,
  rejected: Uint32Array,
  doubted: Uint32Array,
): DecisionState {
  if (steps.findings.some(({ clause }) => clause.effect === 'finding' && clause.severity === 'refuse')) {
    return 'refused';
  }
  if (steps.refers.length > 0) return 'referred';
  if (leader === undefined) return 'none';
  return has(rejected, leader.index) || has(doubted, leader.index) ? 'open' : 'settled';
}

function scoreFacts(slots: Slots): ScoreFacts {
  return {
    securityNeed: slots[scoreSlots.securityNeed] as FactValue<'securityNeed'> | undefined,
    traffic: slots[scoreSlots.traffic] as FactValue<'traffic'> | undefined,
    appearance: slots[scoreSlots.appearance] as FactValue<'appearance'> | undefined,
    latch: slots[scoreSlots.latch] as FactValue<'latch'>,
    leafMaterial: slots[scoreSlots.leafMaterial] as FactValue<'leafMaterial'>,
    frameMaterial: slots[scoreSlots.frameMaterial] as FactValue<'frameMaterial'>,
    frameGrouted: slots[scoreSlots.frameGrouted] as boolean,
    latchProjectionIn: slots[scoreSlots.latchProjectionIn] as number,
    wishedRelease:
      slots[scoreSlots.wishControlledEgress] === true
        ? 'controlled'
        : slots[scoreSlots.wishDelayedEgress] === true
          ? 'delayed'
          : undefined,
  };
}
