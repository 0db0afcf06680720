import type { Decision } from './decision.ts';
import type { Step } from './ruleBook.ts';

type Chosen = Pick<Decision, 'overridden' | 'rejected'>;

/** What forbids the arrangement that a person chose; empty where nothing does, or nobody chose. */
export function forbidsByHand({ overridden, rejected }: Chosen): readonly Step[] {
  if (overridden === null) return [];
  return rejected.find((one) => one.candidate === overridden)?.because ?? [];
}

/** Refused by rule, chosen by a person: it is never settled, whoever signs for it. */
export function isForbiddenByHand(decision: Chosen): boolean {
  return decision.overridden !== null && forbidsByHand(decision).length > 0;
}
