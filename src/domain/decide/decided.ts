import { type Candidate, candidates } from '../devices/candidates.ts';
import { type Cell, type FitRow, fitCell } from '../fit/matrix.ts';
import type { Weights } from '../model/project.ts';
import { type CandidateSet, has } from './candidateSet.ts';
import { type Hanging, whatPlaceHangsOn } from './challengers.ts';
import { answersOf } from './clauseIndex.ts';
import type { Choice, Decision, DecisionState, PassedOver, SevereFinding } from './decision.ts';
import type { FactView } from './factView.ts';
import { judge, type Judgment, openOf, rejectionsOf, whyRejected } from './judge.ts';
import { type FactSet, factWords, type RuleBook } from './ruleBook.ts';
import { type Score, score } from './score.ts';
import { type SortedSteps, stepKinds, stepsFor } from './steps.ts';
import type { Totals } from './totals.ts';

/** What one opening was decided from. The sets behind the decision are worked out again if somebody asks for them. */
export class Found {
  readonly view: FactView;
  readonly book: RuleBook;
  readonly weights: Weights;
  readonly totals: Totals;
  /** The row of the fit table, when the survey leaves only one. */
  readonly row: FitRow | undefined;
  /** The best arrangement that nothing forbids or doubts. */
  readonly best: Candidate | undefined;
  /** What leads, whether it is shown or not. */
  readonly leader: Candidate | undefined;
  /** Passed over for what would happen under it. */
  readonly barred: CandidateSet;
  #judgment: Judgment | undefined;

  constructor(
    view: FactView,
    book: RuleBook,
    weights: Weights,
    totals: Totals,
    row: FitRow | undefined,
    best: Candidate | undefined,
    leader: Candidate | undefined,
    barred: CandidateSet,
  ) {
    this.view = view;
    this.book = book;
    this.weights = weights;
    this.totals = totals;
    this.row = row;
    this.best = best;
    this.leader = leader;
    this.barred = barred;
  }

  get judgment(): Judgment {
    this.#judgment ??= judge(this.book, this.view.slots);
    return this.#judgment;
  }
}

interface Verdict {
  readonly state: DecisionState;
  readonly stands: boolean;
  readonly chosen: Candidate | undefined;
  readonly overridden: Candidate | undefined;
  readonly runnerUp: Candidate | undefined;
  readonly nearTie: boolean;
  readonly severe: readonly SevereFinding[];
  readonly passedOver: readonly PassedOver[];
}

/** What a severe finding of the building puts an end to: nobody is trapped by an opening that is merely left as it is. */
const ended: readonly Decision['state'][] = ['settled', 'open', 'left'];

/**
 * A decision. What a person looks at for one opening at a time (what was ruled out and why, the parts of a score) is
 * worked out when it is asked for, because thousands are decided without anybody asking. A class, because making a
 * getter for each of them at every opening would take longer than the rules.
 */
export class Decided implements Decision {
  readonly state: DecisionState;
  readonly stands: boolean;
  readonly basis: Decision['basis'];
  readonly chosen: Choice | null;
  readonly overridden: Candidate | null;
  readonly runnerUp: Choice | null;
  readonly nearTie: boolean;
  readonly severe: readonly SevereFinding[];
  readonly passedOver: readonly PassedOver[];
  readonly requires: Decision['requires'];
  readonly modifies: Decision['modifies'];
  readonly signOffs: Decision['signOffs'];
  readonly cautions: Decision['cautions'];
  readonly permits: Decision['permits'];
  readonly findings: Decision['findings'];
  readonly refers: Decision['refers'];
  readonly depends: Decision['depends'];
  readonly #found: Found;
  readonly #steps: SortedSteps;
  readonly #verdict: Verdict;
  #rejected: Decision['rejected'] | undefined;
  #open: Decision['open'] | undefined;
  #relied: FactSet | undefined;
  #alone: Decided | undefined;
  #joined: { readonly key: string; readonly decision: Decided } | undefined;

  constructor(found: Found, steps: SortedSteps, verdict: Verdict) {
    const { state, stands, chosen, overridden, runnerUp, nearTie } = verdict;
    this.state = state;
    this.stands = stands;
    this.basis = found.book.basis;
    this.chosen = chosen ? new Chosen(chosen, found) : null;
    this.overridden = overridden ?? null;
    this.runnerUp = runnerUp ? new Chosen(runnerUp, found) : null;
    this.nearTie = nearTie;
    this.severe = verdict.severe;
    this.passedOver = verdict.passedOver;
    this.requires = steps.requires;
    this.modifies = steps.modifies;
    this.signOffs = steps.signOffs;
    this.cautions = steps.cautions;
    this.permits = steps.permits;
    this.findings = steps.findings;
    this.refers = steps.refers;
    this.depends = steps.depends;
    this.#found = found;
    this.#steps = steps;
    this.#verdict = verdict;
  }

  get alone(): Decided {
    return this.#alone ?? this;
  }

  withSevere(more: readonly SevereFinding[]): Decided {
    if (this.#alone) return this.#alone.withSevere(more);
    if (more.length === 0) return this;
    // The same object for the same findings: what is remembered of a decision is remembered of this one too.
    const key = more.map((one) => `${one.key} ${one.says}`).join('\n');
    if (this.#joined?.key !== key) this.#joined = { key, decision: this.#with(more) };
    return this.#joined.decision;
  }

  #with(more: readonly SevereFinding[]): Decided {
    const before = this.#verdict;
    const state = ended.includes(before.state) ? 'severe' : before.state;
    const severe = [...before.severe, ...more];
    const chosen = this.chosen?.candidate;
    const joined = new Decided(this.#found, this.#steps, { ...before, chosen, state, stands: false, severe });
    joined.#alone = this;
    return joined;
  }

  get slots(): Decision['slots'] {
    return this.#found.view.slots;
  }
  get assumed(): Decision['assumed'] {
    return this.#found.view.assumed;
  }
  get rows(): Decision['rows'] {
    return this.#found.judgment.rows.map((ready) => ready.row);
  }
  get rejected(): Decision['rejected'] {
    this.#rejected ??= this.state === 'left' ? [] : rejectionsOf(this.#found.judgment);
    return this.#rejected;
  }
  get open(): Decision['open'] {
    this.#open ??= this.state === 'left' ? [] : openOf(this.#found.judgment, this.#found.totals.tenths);
    return this.#open;
  }
  get hangsOn(): Hanging {
    const { leader, judgment, totals, weights, view, barred } = this.#found;
    if (this.state === 'left') return { steps: [], facts: [] };
    return leader
      ? whatPlaceHangsOn(
          { leader, judgment, barred, totals, weights, slots: view.slots },
          this.overridden !== null,
        )
      : { steps: [...new Set(this.open.flatMap((one) => one.because))], facts: [] };
  }
  get aboutRunnerUp(): SortedSteps | null {
    const { view, book } = this.#found;
    return this.runnerUp && stepsFor(this.runnerUp.candidate, book, answersOf(book.index, view.slots));
  }
  get wouldHaveLed(): Decision['wouldHaveLed'] {
    return bestLost(this.#found);
  }
  get relied(): FactSet {
    this.#relied ??= factsReliedOn(this.#found.judgment, this);
    return this.#relied;
  }
}

class Chosen implements Choice {
  readonly candidate: Candidate;
  readonly #found: Found;
  #score: Score | undefined;

  constructor(candidate: Candidate, found: Found) {
    this.candidate = candidate;
    this.#found = found;
  }

  get cell(): Cell | undefined {
    const { row } = this.#found;
    return row && fitCell(row, this.candidate.deviceId);
  }
  get score(): Score {
    const { totals, weights } = this.#found;
    this.#score ??= score(this.candidate, totals.facts, this.cell, weights);
    return this.#score;
  }
}

/** What every sure step read: those that forbid, the rows of the fit table, and those that ask or say something. */
function factsReliedOn(judgment: Judgment, decided: SortedSteps): FactSet {
  const relied = new Uint32Array(factWords);
  const rely = ({ reads }: { readonly reads: FactSet }) =>
    reads.forEach((bits, word) => (relied[word] = (relied[word] as number) | bits));
  judgment.sure.forEach(rely);
  judgment.rows.forEach(rely);
  if (judgment.ratedStep?.sure) rely(judgment.ratedStep.ready);
  for (const kind of stepKinds) for (const step of decided[kind]) if (step.sure) rely(step.ready);
  return relied;
}

/** The best of what rules alone forbid, when it beats the choice; what cannot go into the door would never have led. */
function bestLost({ judgment, totals: { tenths }, best }: Found): Decision['wouldHaveLed'] {
  let lost = -1;
  for (let index = 0; index < candidates.length; index++) {
    if (!has(judgment.rejected, index) || has(judgment.impossible, index)) continue;
    if (lost < 0 || (tenths[index] as number) > (tenths[lost] as number)) lost = index;
  }
  const candidate = candidates[lost];
  if (!candidate || !best || (tenths[lost] as number) <= (tenths[best.index] as number)) return null;
  return { candidate, because: whyRejected(judgment, lost) };
}
