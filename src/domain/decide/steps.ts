import type { Candidate } from '../devices/candidates.ts';
import type { ItemId } from '../devices/items.ts';
import type { Clause } from '../rules/rule.ts';
import { type Answers, type ClauseSet, lowestBit } from './clauseIndex.ts';
import type { ReadyClause, RuleBook, Step } from './ruleBook.ts';

/** What the rules say beyond forbidding, about the choice and about the opening. */
export interface SortedSteps {
  readonly requires: readonly Step[];
  readonly modifies: readonly Step[];
  readonly signOffs: readonly Step[];
  readonly cautions: readonly Step[];
  readonly permits: readonly Step[];
  readonly findings: readonly Step[];
  readonly refers: readonly Step[];
  /** Would apply if a missing fact turns out so. */
  readonly depends: readonly Step[];
}

export const stepKinds = [
  'requires',
  'modifies',
  'signOffs',
  'cautions',
  'permits',
  'findings',
  'refers',
  'depends',
] as const satisfies readonly (keyof SortedSteps)[];

const none: readonly Step[] = [];

/** Steps of one kind while an opening is decided; the place is used again, a decision keeps a copy of the right length. */
class Heard {
  readonly #steps: Step[] = [];
  #count = 0;

  add(step: Step): void {
    this.#steps[this.#count++] = step;
  }
  taken(): readonly Step[] {
    const taken = this.#count === 0 ? none : this.#steps.slice(0, this.#count);
    this.#count = 0;
    return taken;
  }
}

const requires = new Heard();
const modifies = new Heard();
const signOffs = new Heard();
const cautions = new Heard();
const permits = new Heard();
const findings = new Heard();
const refers = new Heard();
const depends = new Heard();

/**
 * A clause about some candidates is heard only for the one that leads; one about the opening always. Where nothing is
 * left to lead, what every lock would need is heard all the same: an estimator prices it, whichever comes in the end.
 */
export function stepsFor(
  leader: Candidate | 'noneLeft' | undefined,
  book: RuleBook,
  answers: Answers,
): SortedSteps {
  const { aboutOpening, aboutCandidate, aboutEveryLock } = book.sets;
  hear(book, aboutOpening, answers);
  const aboutLeader = leader === 'noneLeft' ? aboutEveryLock : leader && aboutCandidate[leader.index];
  if (aboutLeader) hear(book, aboutLeader, answers);
  return {
    requires: requires.taken(),
    modifies: modifies.taken(),
    signOffs: signOffs.taken(),
    cautions: cautions.taken(),
    permits: permits.taken(),
    findings: findings.taken(),
    refers: refers.taken(),
    depends: depends.taken(),
  };
}

function hear({ clauses }: RuleBook, wanted: ClauseSet, { speak, sure }: Answers): void {
  for (let word = 0; word < speak.length; word++) {
    const surely = sure[word] as number;
    let bits = (speak[word] as number) & (wanted[word] as number);
    for (; bits !== 0; bits &= bits - 1) {
      const ready = clauses[lowestBit(word, bits)] as ReadyClause;
      if ((surely & bits & -bits) !== 0) heardAs(ready.clause.effect).add(ready.yes);
      // Nobody is told of a contradiction that may turn out to be none.
      else if (ready.clause.effect !== 'finding') depends.add(ready.unknown);
    }
  }
}

function heardAs(effect: Clause['effect']): Heard {
  switch (effect) {
    case 'require':
      return requires;
    case 'modify':
      return modifies;
    case 'signOff':
      return signOffs;
    case 'caution':
      return cautions;
    case 'permit':
      return permits;
    case 'finding':
      return findings;
    case 'refer':
      return refers;
    case 'prohibit':
      throw new Error('Prohibitions are judged apart.');
  }
}

/**
 * What may still be asked, signed for or taken out of the program's hands, depending on a fact nobody knows: as long as
 * there is any, nothing is settled. An item that is asked for anyway waits for nothing. Contradictions are left out:
 * they are caught when they are given.
 */
export function awaited({
  depends,
  requires: sure,
}: Pick<SortedSteps, 'depends' | 'requires'>): readonly Step[] {
  if (depends.length === 0) return none;
  return depends.filter(({ clause }) => {
    switch (clause.effect) {
      case 'refer':
        return true;
      case 'signOff':
        return clause.grade !== 'note';
      case 'require':
        return clause.items.some((item) => !sure.some((step) => asksFor(step, item)));
      default:
        return false;
    }
  });
}

/** Every item that a rule asks for, once. */
export function itemsAskedFor({ requires: sure }: Pick<SortedSteps, 'requires'>): readonly ItemId[] {
  return [...new Set(sure.flatMap(({ clause }) => (clause.effect === 'require' ? clause.items : [])))];
}

function asksFor({ clause }: Step, item: ItemId): boolean {
  return clause.effect === 'require' && clause.items.includes(item);
}

export function hasRefusal(steps: SortedSteps): boolean {
  return steps.findings.some(({ clause }) => clause.effect === 'finding' && clause.severity === 'refuse');
}
