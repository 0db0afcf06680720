import { type Candidate, candidates } from '../devices/candidates.ts';
import type { Slots } from '../logic/slots.ts';
import type { FactKey } from '../model/fields.ts';
import type { Weights } from '../model/project.ts';
import { type CandidateSet, has } from './candidateSet.ts';
import { type Judgment, whyOpen } from './judge.ts';
import { mayOutrank, rankingGaps } from './outrank.ts';
import type { Step } from './ruleBook.ts';
import { hangingWish } from './scoreFacts.ts';
import type { Totals } from './totals.ts';

/** What the place of the leader rests on. */
export interface Place {
  readonly leader: Candidate;
  readonly judgment: Judgment;
  /** Passed over for what would happen under it: it challenges nobody. */
  readonly barred: CandidateSet;
  readonly totals: Totals;
  readonly weights: Weights;
  readonly slots: Slots;
}

/** What is not ruled out and could take the place of the leader, once more is known. */
function challengers({ leader, judgment, barred, totals, weights, slots }: Place): readonly Candidate[] {
  const { rejected, doubted, rows } = judgment;
  const ahead = mayOutrank(
    leader,
    totals,
    rows.map((ready) => ready.row),
    weights,
  );
  const wished = hangingWish(slots, rejected, doubted);
  return candidates.filter(
    ({ index, release }) =>
      index !== leader.index &&
      !has(rejected, index) &&
      !has(barred, index) &&
      (has(ahead, index) || release === wished),
  );
}

export function mayLoseItsPlace(place: Place): boolean {
  return challengers(place).length > 0;
}

/** What it hangs on whether the leader stays where it is: steps in doubt, and facts that only the ranking reads. */
export interface Hanging {
  readonly steps: readonly Step[];
  readonly facts: readonly FactKey[];
}

export function whatPlaceHangsOn(place: Place, byHand: boolean): Hanging {
  const { leader, judgment, totals, weights } = place;
  const steps = new Set(has(judgment.rejected, leader.index) ? [] : whyOpen(judgment, leader.index));
  if (byHand) return { steps: [...steps], facts: [] };
  const others = challengers(place);
  for (const { index } of others) for (const step of whyOpen(judgment, index)) steps.add(step);
  if (others.length > 0 && (judgment.rows.length > 1 || judgment.mayBeOutside)) {
    for (const row of judgment.rows) steps.add(row.unsureStep);
  }
  return { steps: [...steps], facts: rankingGaps(leader, others, totals.facts, weights) };
}
