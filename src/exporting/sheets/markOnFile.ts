import type { ReviewStatus, Standing } from '../../domain/review/status.ts';
import { isApproval, verdictSays } from '../../domain/review/words.ts';
import { dayInWords } from './day.ts';

/** An entry of the log as it is read out: what, by whom, and whether it still speaks of what stands here. */
export interface MarkOnFile {
  readonly id: string;
  readonly verdict: string;
  /** "Approved by J. Reviewer, plan reviewer, Firm, license 123, March 2, 2026". */
  readonly says: string;
  readonly reason: string;
  /** The document behind it. */
  readonly reference: string;
  readonly conditions: readonly string[];
  readonly stale: boolean;
  /** Taken back: by whom and why; empty while it stands. */
  readonly withdrawn: string;
  /** An approval that still speaks of what stands here; anything else still waits for somebody. */
  readonly holds: boolean;
  readonly canWithdraw: boolean;
  readonly changes: readonly string[];
  /** What changed since without changing what was signed. */
  readonly without: readonly string[];
}

/** Everything on file at an opening, in the order it was written: nothing is left out for what came later. */
export function marksOnFile(status: ReviewStatus): readonly MarkOnFile[] {
  return status.marks.map(markOf);
}

export function markOf({ verdict, stale, withdrawnBy, says, without }: Standing): MarkOnFile {
  const { by, role, firm, license } = verdict;
  const word = verdictSays[verdict.verdict];
  const who = [by, role, firm, license === '' ? '' : `license ${license}`].filter((one) => one !== '');
  return {
    id: verdict.id,
    verdict: word,
    says: `${word} by ${who.join(', ')}, ${dayInWords(verdict.on)}`,
    reason: verdict.reason,
    reference: verdict.reference,
    conditions: verdict.conditions,
    stale: stale && withdrawnBy === null,
    withdrawn: withdrawnBy
      ? `Withdrawn by ${withdrawnBy.by}, ${dayInWords(withdrawnBy.on)}: ${withdrawnBy.reason}`
      : '',
    holds: isApproval(verdict.verdict) && !stale && withdrawnBy === null,
    canWithdraw: verdict.verdict !== 'withdrawn' && withdrawnBy === null,
    changes: withdrawnBy ? [] : says,
    without: withdrawnBy ? [] : without,
  };
}
