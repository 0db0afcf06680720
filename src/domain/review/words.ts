import type { VerdictKind } from '../model/verdict.ts';

export type ReviewState =
  | 'notNeeded'
  | 'open'
  | 'approved'
  | 'approvedWithConditions'
  | 'refused'
  | 'passedToAuthority'
  | 'stale';

export const reviewStateWords: Record<ReviewState, string> = {
  notNeeded: 'Not needed',
  open: 'Waits for a reviewer',
  approved: 'Approved',
  approvedWithConditions: 'Approved with conditions',
  refused: 'Refused',
  passedToAuthority: 'With the authority',
  stale: 'Stale: changed since it was reviewed',
};

/** As it stands in the log and on paper: "Refused by J. Reviewer". */
export const verdictSays: Record<VerdictKind, string> = {
  approved: 'Approved',
  approvedWithConditions: 'Approved with conditions',
  refused: 'Refused',
  passedToAuthority: 'Passed to the authority',
  withdrawn: 'Withdrawn',
};

/** As somebody chooses it. */
export const verdictWords: Record<VerdictKind, string> = {
  approved: 'Approve as it stands',
  approvedWithConditions: 'Approve with conditions',
  refused: 'Refuse',
  passedToAuthority: 'Pass to the authority',
  withdrawn: 'Withdraw',
};

export const isApproval = (verdict: VerdictKind | ReviewState): boolean =>
  verdict === 'approved' || verdict === 'approvedWithConditions';

export const rolesAreNoSecurity =
  'Names and roles are a way of working in a browser without accounts. They keep nobody out and prove nothing by themselves.';

export const verdictsAreNotUndone =
  'A verdict is not undone. It is withdrawn on the Review page, with a reason, and stays on file.';
