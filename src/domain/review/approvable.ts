import type { Decision } from '../decide/decision.ts';
import { stateWords } from '../decide/words.ts';

/** An arrangement chosen by hand although a rule forbids it: refused by rule, chosen by a person. */
export function isForbiddenByHand(decision: Pick<Decision, 'overridden' | 'rejected'>): boolean {
  const { overridden } = decision;
  return overridden !== null && decision.rejected.some((one) => one.candidate === overridden);
}

/** Why nobody can approve this opening by a name alone; undefined where a name is enough. */
export function whyNoApproval(decision: Decision): string | undefined {
  const alone = decision.alone.state;
  if (alone === 'refused' || alone === 'referred' || alone === 'none') return stateWords[alone].means;
  if (isForbiddenByHand(decision)) {
    const rules = decision.rejected
      .find((one) => one.candidate === decision.overridden)
      ?.because.map((step) => step.rule.id);
    return `${[...new Set(rules)].join(', ')} forbids what was chosen by hand.`;
  }
  if (decision.chosen === null) return 'Nothing is chosen here.';
  if (alone === 'open') return `It is provisional: ${stateWords.open.means}`;
  const shutIn = decision.severe.find(({ from }) => from === 'opening');
  return shutIn?.says;
}
