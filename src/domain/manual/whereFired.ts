import type { Decision } from '../decide/decision.ts';
import type { Step } from '../decide/ruleBook.ts';
import type { Opening } from '../model/project.ts';

/** One opening in whose decision a rule took part, and how, the weightiest first. */
export interface FiredAt {
  readonly openingId: string;
  readonly mark: string;
  readonly how: readonly string[];
}

/** Which rules took part in a decision, and in what way. */
function rulesIn(decision: Decision): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  const put = (steps: readonly Step[], how: string) => {
    for (const { rule } of steps) {
      const ways = found.get(rule.id);
      if (!ways) found.set(rule.id, [how]);
      else if (!ways.includes(how)) ways.push(how);
    }
  };
  put(decision.findings, 'found a contradiction');
  put(decision.refers, 'sent it to a reviewer');
  put(decision.signOffs, 'asks for sign-off');
  put(decision.requires, 'added a part');
  put(decision.modifies, 'asks for work');
  put(decision.cautions, 'cautions');
  put(decision.permits, 'permits');
  for (const one of decision.rejected) put(one.because, 'ruled devices out');
  for (const one of decision.open) put(one.because, 'keeps devices open');
  put(decision.depends, 'waits for a fact');
  return found;
}

/** By rule, the openings of a project in the order given. */
export function whereFired(
  openings: readonly Opening[],
  decisions: ReadonlyMap<string, Decision>,
): ReadonlyMap<string, readonly FiredAt[]> {
  const found = new Map<string, FiredAt[]>();
  for (const opening of openings) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    for (const [ruleId, how] of rulesIn(decision)) {
      const list = found.get(ruleId) ?? [];
      found.set(ruleId, list);
      list.push({ openingId: opening.id, mark: opening.mark, how });
    }
  }
  return found;
}
