import { reviewStateWords, type ReviewStatus } from '../../domain/schedules/review.ts';
import { dayInWords } from './day.ts';

/** A reviewer's mark as it is read out: what, by whom, and whether it still speaks of what stands here. */
export interface MarkOnFile {
  readonly verdict: string;
  readonly by: string;
  readonly on: string;
  /** "Approved by J. Reviewer, March 2, 2026". */
  readonly says: string;
  readonly reason: string;
  readonly stale: boolean;
  /** An approval that still speaks of what stands here; anything else still waits for somebody. */
  readonly holds: boolean;
  readonly changes: readonly string[];
}

export function markOnFile(status: ReviewStatus): MarkOnFile | null {
  const { review } = status;
  if (review === null) return null;
  const verdict = reviewStateWords[review.verdict];
  const on = dayInWords(review.on);
  return {
    verdict,
    by: review.by,
    on,
    says: `${verdict} by ${review.by}, ${on}`,
    reason: review.reason,
    stale: status.state === 'stale',
    holds: status.state === 'approved',
    changes: status.says,
  };
}
