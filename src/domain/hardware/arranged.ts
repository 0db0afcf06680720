import type { Candidate } from '../devices/candidates.ts';
import type { Cell } from '../fit/matrix.ts';
import type { Slots } from '../logic/slots.ts';
import type { Clause, Rule } from '../rules/rule.ts';

/** A rule that asks for something at the opening, and the clause that says so. */
interface Asking {
  readonly rule: Pick<Rule, 'id'>;
  readonly clause: Clause;
}

/**
 * As much of a decision as goods and work are counted from: they are counted while it is still being made, because what
 * would happen under an arrangement hangs on its parts. So this room lies below the engine and knows nothing of it.
 */
export interface Arranged {
  readonly chosen: {
    readonly candidate: Candidate;
    /** How it goes in; undefined when door, frame and latch leave more than one row possible. */
    readonly cell: Cell | undefined;
  } | null;
  readonly slots: Slots;
  readonly requires: readonly Asking[];
}
