import { type Candidate, candidates } from '../devices/candidates.ts';
import type { Decision } from './decision.ts';
import { candidateInWords, releaseInWords } from './words.ts';

/** What a person may put in place of the recommendation: everything but what cannot go into the door. */
export interface HandChoice {
  readonly id: string;
  readonly name: string;
  /** Empty where nothing forbids it. */
  readonly forbiddenBy: string;
}

export function handChoices(decision: Decision): readonly HandChoice[] {
  const forbidden = new Map<Candidate, string>();
  const impossible = new Set<Candidate>();
  for (const { candidate, because } of decision.rejected) {
    const rules = because.filter((step) => !step.rule.id.startsWith('FIT-'));
    if (rules.length < because.length) impossible.add(candidate);
    forbidden.set(candidate, [...new Set(rules.map((step) => step.rule.id))].join(', '));
  }
  return candidates
    .filter((candidate) => !impossible.has(candidate))
    .map((candidate) => ({
      id: candidate.id,
      name: `${candidateInWords(candidate)} · ${releaseInWords(candidate)}`,
      forbiddenBy: forbidden.get(candidate) ?? '',
    }))
    .toSorted((a, b) => Number(a.forbiddenBy !== '') - Number(b.forbiddenBy !== ''));
}
