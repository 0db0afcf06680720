import { type Candidate, candidates } from '../devices/candidates.ts';
import type { Decision } from './decision.ts';
import type { Step } from './ruleBook.ts';

/** What a person may put in place of the recommendation: everything but what cannot go into the door. */
export interface Choosable {
  readonly candidate: Candidate;
  /** Empty where nothing forbids it. */
  readonly forbiddenBy: readonly Step[];
}

/** What nothing forbids comes first. */
export function choosableByHand(decision: Decision): readonly Choosable[] {
  const forbidden = new Map<Candidate, readonly Step[]>();
  const impossible = new Set<Candidate>();
  for (const { candidate, because } of decision.rejected) {
    const rules = because.filter((step) => !isOfFit(step));
    if (rules.length < because.length) impossible.add(candidate);
    forbidden.set(candidate, rules);
  }
  return candidates
    .filter((candidate) => !impossible.has(candidate))
    .map((candidate) => ({ candidate, forbiddenBy: forbidden.get(candidate) ?? [] }))
    .toSorted((a, b) => Number(a.forbiddenBy.length > 0) - Number(b.forbiddenBy.length > 0));
}

/** What the fit table says is no rule of a code: nobody can lift it by a signature. */
const isOfFit = ({ rule }: Step) => rule.id.startsWith('FIT-');
