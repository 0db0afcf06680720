import type { Decision } from '../decide/decision.ts';
import type { Opening, Project } from '../model/project.ts';
import { reviewState, verdictsAt } from './status.ts';

/** A condition of an approval: it is built, operated and tested like whatever a rule asks for. */
export interface ApprovalCondition {
  readonly says: string;
  /** "J. Reviewer, 2026-03-02"; with "stale" where the approval no longer speaks of what stands here. */
  readonly from: string;
}

/**
 * The conditions under which this opening was approved, until the approval is withdrawn: one list for set, sequence,
 * acceptance test and opening. A later approval without conditions lifts none of them; only a withdrawal does. Those of
 * a stale approval stay and say so, because changing back restores it.
 */
export function conditionsAt(
  project: Project,
  opening: Opening,
  decision: Decision,
): readonly ApprovalCondition[] {
  const written = verdictsAt(project, opening.id).some(({ conditions }) => conditions.length > 0);
  if (!written) return [];
  return reviewState(project, opening, decision).marks.flatMap(({ verdict, stale, withdrawnBy }) =>
    withdrawnBy !== null || verdict.verdict !== 'approvedWithConditions'
      ? []
      : verdict.conditions.map((says) => ({
          says,
          from: `${verdict.by}, ${verdict.on}${stale ? ', stale' : ''}`,
        })),
  );
}

/** "The lever stays free. (J. Reviewer, 2026-03-02)" */
export const conditionInWords = ({ says, from }: ApprovalCondition) => `${says} (${from})`;

export const conditionOfApproval = 'Condition of approval';
