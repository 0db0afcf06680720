import type { Candidate } from '../devices/candidates.ts';
import type { Slots } from '../logic/compile.ts';
import { NO, UNKNOWN } from '../logic/verdict.ts';
import { type ClauseSet, clausesLeft, lowestClause } from './clauseIndex.ts';
import type { ReadyClause, RuleBook, Step } from './ruleBook.ts';

/** What the rules say beyond forbidding, about the choice and about the opening. */
export interface SortedSteps {
  readonly requires: Step[];
  readonly modifies: Step[];
  readonly signOffs: Step[];
  readonly cautions: Step[];
  readonly permits: Step[];
  readonly findings: Step[];
  readonly refers: Step[];
  /** Would apply if a missing fact turns out so. */
  readonly depends: Step[];
}

/** A clause about some candidates is heard only for the one that leads; one about the opening always. */
export function stepsFor(
  leader: Candidate | undefined,
  book: RuleBook,
  slots: Slots,
  left: ClauseSet = clausesLeft(book.index, slots),
): SortedSteps {
  const sorted: SortedSteps = {
    requires: [],
    modifies: [],
    signOffs: [],
    cautions: [],
    permits: [],
    findings: [],
    refers: [],
    depends: [],
  };
  const { aboutOpening, aboutCandidate } = book.sets;
  hear(book, aboutOpening, left, slots, sorted);
  const aboutLeader = leader && aboutCandidate[leader.index];
  if (aboutLeader) hear(book, aboutLeader, left, slots, sorted);
  return sorted;
}

function hear(
  { clauses }: RuleBook,
  wanted: ClauseSet,
  left: ClauseSet,
  slots: Slots,
  sorted: SortedSteps,
): void {
  for (let word = 0; word < left.length; word++) {
    let bits = (left[word] as number) & (wanted[word] as number);
    for (; bits !== 0; bits &= bits - 1) {
      const ready = clauses[lowestClause(word, bits)] as ReadyClause;
      const verdict = ready.test(slots);
      if (verdict === NO) continue;
      if (verdict === UNKNOWN) {
        // Nobody is told of a contradiction that may turn out to be none.
        if (ready.clause.effect !== 'finding') sorted.depends.push(ready.unknown);
        continue;
      }
      listFor(ready, sorted).push(ready.yes);
    }
  }
}

function listFor({ clause }: ReadyClause, sorted: SortedSteps): Step[] {
  switch (clause.effect) {
    case 'require':
      return sorted.requires;
    case 'modify':
      return sorted.modifies;
    case 'signOff':
      return sorted.signOffs;
    case 'caution':
      return sorted.cautions;
    case 'permit':
      return sorted.permits;
    case 'finding':
      return sorted.findings;
    case 'refer':
      return sorted.refers;
    case 'prohibit':
      throw new Error('Prohibitions are judged apart.');
  }
}

export function hasRefusal(steps: SortedSteps): boolean {
  return steps.findings.some(({ clause }) => clause.effect === 'finding' && clause.severity === 'refuse');
}
