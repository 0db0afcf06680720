import { forbidsByHand } from '../decide/byHand.ts';
import type { Decision } from '../decide/decision.ts';
import { choosableByHand } from '../decide/handChoice.ts';
import type { Step } from '../decide/ruleBook.ts';
import { arrangementInWords } from './arrangement.ts';

const idsOf = (steps: readonly Step[]) => [...new Set(steps.map(({ rule }) => rule.id))].join(', ');

/** "R-55, R-60": what forbids the arrangement that a person chose; empty where nothing does, or nobody chose. */
export function forbiddingRules(decision: Pick<Decision, 'overridden' | 'rejected'>): string {
  return idsOf(forbidsByHand(decision));
}

/** What a person may put in place of the recommendation, as a list to pick from. */
export interface HandChoice {
  readonly id: string;
  readonly name: string;
  /** Empty where nothing forbids it. */
  readonly forbiddenBy: string;
}

export function handChoices(decision: Decision): readonly HandChoice[] {
  return choosableByHand(decision).map(({ candidate, forbiddenBy }) => ({
    id: candidate.id,
    name: arrangementInWords(candidate),
    forbiddenBy: idsOf(forbiddenBy),
  }));
}
