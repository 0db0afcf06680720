import type { Decision } from '../decide/decision.ts';
import type { Review } from '../model/project.ts';
import { reviewStateWords, whatReviewerSaw } from './review.ts';

export type Verdict = Review['verdict'];

/** What a reviewer has filled in so far. */
export interface ReviewDraft {
  readonly verdict: Verdict | '';
  readonly by: string;
  readonly on: string;
  readonly reason: string;
}

export const verdictWords: Record<Verdict, string> = {
  approved: 'Approve as it stands',
  refused: 'Refuse',
  toAhj: 'Take to the authority',
};

export type ReviewProblems = { readonly [K in keyof ReviewDraft]?: string };

/** The arrangement was chosen by hand although a rule forbids it. */
export function isOverProhibition(decision: Decision): boolean {
  const { overridden, rejected } = decision;
  return overridden !== null && rejected.some((one) => one.candidate === overridden);
}

/** A plain approval speaks for itself; everything else is worth nothing without its reason. */
export function needsReason(verdict: ReviewDraft['verdict'], decision: Decision): boolean {
  return (
    verdict === 'refused' || verdict === 'toAhj' || (verdict === 'approved' && isOverProhibition(decision))
  );
}

/** One sentence per field that is not in order; none when the mark can be set. */
export function reviewProblems(draft: ReviewDraft, decision: Decision): ReviewProblems {
  return {
    ...(draft.verdict === '' && { verdict: 'Choose what you decide.' }),
    ...(draft.by.trim() === '' && { by: 'A review without a name is not a sign-off.' }),
    ...(!isDay(draft.on) && { on: 'Give the day as year, month and day.' }),
    ...(draft.reason.trim() === '' &&
      needsReason(draft.verdict, decision) && { reason: reasonMissing(draft.verdict) }),
  };
}

function reasonMissing(verdict: ReviewDraft['verdict']): string {
  if (verdict === 'approved') {
    return 'A rule forbids this arrangement: name the written approval that lifts it.';
  }
  return verdict === 'refused'
    ? 'Say why, so that it can be corrected.'
    : 'Say what the authority is asked to decide.';
}

function isDay(day: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(Date.parse(day));
}

/** The mark that goes on file, with what lay before the reviewer. Undefined while something is missing. */
export function reviewFrom(draft: ReviewDraft, decision: Decision): Review | undefined {
  const { verdict } = draft;
  if (verdict === '' || Object.keys(reviewProblems(draft, decision)).length > 0) return undefined;
  return {
    verdict,
    by: draft.by.trim(),
    on: draft.on,
    reason: draft.reason.trim(),
    saw: { ...whatReviewerSaw(decision) },
  };
}

/** How the step is called in the history: "108: Approved by J. Reviewer". */
export function reviewLabel(mark: string, review: Review | null): string {
  return review === null
    ? `${mark}: review mark removed`
    : `${mark}: ${reviewStateWords[review.verdict]} by ${review.by}`;
}
