import type { CodeBasis } from '../codes/basis.ts';
import type { Candidate } from '../devices/candidates.ts';
import type { Cell, FitRow } from '../fit/matrix.ts';
import type { Slots } from '../logic/slots.ts';
import type { Arranged } from '../hardware/arranged.ts';
import type { FactKey } from '../model/fields.ts';
import type { Hanging } from './challengers.ts';
import type { FactSet, Step } from './ruleBook.ts';
import type { Score } from './score.ts';
import type { SortedSteps } from './steps.ts';

/**
 * `settled`: no answer that is not known yet, and no two together, could change the arrangement, what is signed for or
 * what is asked for, unless it contradicts the survey. `open`: some could; nothing is chosen before door type, leaf and
 * latch are known. `severe`: what leads was run through every condition, or stands in a building that was, and somebody
 * is shut in or a fire door fails. `left`: nobody wants anything here, so nothing is chosen and nothing bought. `refused`: the survey contradicts itself where lives depend on it. `referred`: never decided here, a
 * reviewer does. `none`: the rules leave nothing.
 */
export type DecisionState = 'settled' | 'open' | 'severe' | 'refused' | 'referred' | 'none' | 'left';

export interface Choice {
  readonly candidate: Candidate;
  readonly score: Score;
  /** How it goes in; undefined when door, frame and latch leave more than one row possible. */
  readonly cell: Cell | undefined;
}

/** What is about to be recommended, with the rules that ask for its parts. */
export interface Recommending extends Arranged {
  readonly requires: SortedSteps['requires'];
}

/** A severe finding, in a sentence, about what leads or about the building around it. */
export interface SevereFinding {
  /** What is wrong and where, the same whatever marks and rooms are called. */
  readonly key: string;
  readonly says: string;
  readonly from: 'opening' | 'building';
}

/** It scores better than what leads and is not taken, because of what would happen. */
export interface PassedOver {
  readonly candidate: Candidate;
  readonly severe: readonly SevereFinding[];
}

export interface Rejection {
  readonly candidate: Candidate;
  readonly because: readonly Step[];
}

/** Forbidden or not, depending on facts nobody knows yet. */
export interface OpenCandidate {
  readonly candidate: Candidate;
  readonly because: readonly Step[];
  readonly tenths: number;
}

/** The result is the explanation: screens and prints only lay it out. */
export interface Decision extends SortedSteps {
  readonly state: DecisionState;
  readonly basis: CodeBasis;
  readonly slots: Slots;
  readonly assumed: ReadonlyMap<FactKey, string>;
  /** Nothing forbids what leads, and nothing unknown may forbid it; more may still be asked for or signed. */
  readonly stands: boolean;
  /** What is recommended, or leads while the state is `open`. */
  readonly chosen: Choice | null;
  /** Set when a person chose something else than the engine. */
  readonly overridden: Candidate | null;
  /** The best of what is not ruled out, with another device; it may be in doubt. */
  readonly runnerUp: Choice | null;
  /** What the rules say of it, were it taken. */
  readonly aboutRunnerUp: SortedSteps | null;
  readonly nearTie: boolean;
  /** Severe findings of the arrangement, and those of the building once they were taken in. */
  readonly severe: readonly SevereFinding[];
  readonly passedOver: readonly PassedOver[];
  readonly rejected: readonly Rejection[];
  /** The rejected candidate that would have scored best, when it beats the choice. */
  readonly wouldHaveLed: Rejection | null;
  readonly open: readonly OpenCandidate[];
  /** Rows of the fit table that door, frame and latch leave possible; one when the survey says enough. */
  readonly rows: readonly FitRow[];
  readonly relied: FactSet;
  /** What is in doubt on which it hangs whether the choice keeps its place. */
  readonly hangsOn: Hanging;
  /** Before the building was taken in: what trying an answer at this opening alone is held against. */
  readonly alone: Decision;
  /** The same decision with the severe findings of the building: it is settled no longer. */
  withSevere(more: readonly SevereFinding[]): Decision;
}

/** What was decided at each opening, by its id. */
export type Decisions = ReadonlyMap<string, Decision>;
