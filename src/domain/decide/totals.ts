import { type Candidate, candidates } from '../devices/candidates.ts';
import { type Cell, type FitRow, fitCell } from '../fit/matrix.ts';
import type { Weights } from '../model/project.ts';
import { scoreAll, type ScoreFacts } from './score.ts';

/**
 * Totals of all candidates, remembered: the doors of a building repeat themselves, and the ranking looks at few of
 * their facts. The type asks for every one of them, so that none can be forgotten in the key.
 */
const inKey: Readonly<Record<keyof ScoreFacts, true>> = {
  securityNeed: true,
  traffic: true,
  appearance: true,
  wishedRelease: true,
  failSafeOnly: true,
  fireRated: true,
  latch: true,
  leafMaterial: true,
  frameMaterial: true,
  frameGrouted: true,
  workStatus: true,
  latchProjectionIn: true,
};
const keyParts = Object.keys(inKey) as readonly (keyof ScoreFacts)[];

/** The totals of one kind of opening, with what they were computed from. Shared: nobody writes into it. */
export interface Totals {
  readonly facts: ScoreFacts;
  /** By candidate index, in tenths of a point. */
  readonly tenths: Int32Array;
}

/** Looked up fact by fact: a key put together from all of them costs several times as much, and leaves garbage. */
type Branch = Map<unknown, Branch | Totals>;

let remembered = new WeakMap<Weights, Branch>();
let count = 0;
/** About a megabyte; then it starts afresh. */
const mostRemembered = 2000;

export function totalsFor(facts: ScoreFacts, row: FitRow | undefined, weights: Weights): Totals {
  let branch = remembered.get(weights);
  if (!branch) remembered.set(weights, (branch = new Map()));
  for (let part = 0; part < keyParts.length; part++) {
    branch = branchBelow(branch, facts[keyParts[part] as keyof ScoreFacts]);
  }
  let totals = branch.get(row) as Totals | undefined;
  if (!totals) {
    if (count++ >= mostRemembered) {
      remembered = new WeakMap();
      count = 0;
    }
    totals = compute(facts, row, weights);
    branch.set(row, totals);
  }
  return totals;
}

function branchBelow(branch: Branch, answer: unknown): Branch {
  let below = branch.get(answer) as Branch | undefined;
  if (!below) branch.set(answer, (below = new Map()));
  return below;
}

function compute(facts: ScoreFacts, row: FitRow | undefined, weights: Weights): Totals {
  const tenths = new Int32Array(candidates.length);
  const cellOf = (candidate: Candidate): Cell | undefined => row && fitCell(row, candidate.deviceId);
  scoreAll(facts, cellOf, weights, tenths);
  return { facts, tenths };
}
