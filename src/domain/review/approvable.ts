import { isForbiddenByHand } from '../decide/byHand.ts';
import { forbiddingRules } from '../words/byHand.ts';
import type { Decision } from '../decide/decision.ts';
import { stateWords } from '../words/states.ts';

/** Why nobody can approve this opening by a name alone; undefined where a name is enough. */
export function whyNoApproval(decision: Decision): string | undefined {
  const alone = decision.alone.state;
  if (alone === 'refused' || alone === 'referred' || alone === 'none') return stateWords[alone].means;
  if (isForbiddenByHand(decision)) {
    return `${forbiddingRules(decision)} forbids what was chosen by hand.`;
  }
  if (decision.chosen === null) return 'Nothing is chosen here.';
  if (alone === 'open') return `It is provisional: ${stateWords.open.means}`;
  const shutIn = decision.severe.find(({ from }) => from === 'opening');
  return shutIn?.says;
}
