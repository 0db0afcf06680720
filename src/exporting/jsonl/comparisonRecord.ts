import { basisInWords } from '../../domain/codes/basis.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { compareOpening } from '../../domain/schedules/otherBasis.ts';
import type { ComparisonRecord } from './schema.ts';

/** What another basis would change at one opening, for another program. */
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
