import { basisInWords } from '../../domain/codes/basis.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { compareOpening, type DifferenceKind, type OtherBasis } from '../../domain/schedules/otherBasis.ts';

/** What another basis would change at one opening, for another program. */
export interface ComparisonRecord {
  readonly basis: string;
  /** Empty where the opening comes out the same. */
  readonly differences: readonly {
    readonly kind: DifferenceKind;
    /** Empty where only one side says something. */
    readonly now: string;
    readonly instead: string;
    readonly rules: readonly { readonly rule: string; readonly cites: readonly string[] }[];
  }[];
}

export function comparisonRecord(project: Project, opening: Opening, other: OtherBasis): ComparisonRecord {
  return {
    basis: basisInWords(other.basis),
    differences: compareOpening(project, opening, other).differences.map(
      ({ kind, now, instead, behind }) => ({
        kind,
        now,
        instead,
        rules: behind.map(({ ruleId, cites }) => ({ rule: ruleId, cites })),
      }),
    ),
  };
}
