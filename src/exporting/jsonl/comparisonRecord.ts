import { basisInWords } from '../../domain/codes/basis.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { compareOpening, type DifferenceKind } from '../../domain/schedules/otherBasis.ts';

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

export function comparisonRecord(opening: Opening, now: Decision, then: Decision): ComparisonRecord {
  return {
    basis: basisInWords(then.basis),
    differences: compareOpening(opening, now, then).differences.map(
      ({ kind, now: was, instead, behind }) => ({
        kind,
        now: was,
        instead,
        rules: behind.map(({ ruleId, cites }) => ({ rule: ruleId, cites })),
      }),
    ),
  };
}
