import { decide } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import { nextToSettle, wasAsked } from '../decide/whatMatters.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { missingForOrder } from '../sets/forOrder.ts';

/**
 * The question to ask next: until the opening is settled what settles it, then what its order waits for, in the order in
 * which a survey looks at a door. Undefined when no answer that was not asked for yet can change anything.
 */
export function nextQuestion(
  project: Project,
  opening: Opening,
  decision = decide(project, opening),
): FactKey | undefined {
  if (decision.state === 'refused') return undefined;
  return (
    nextToSettle(project, opening, decision) ??
    missingForOrder(project, opening, decision).find((key) => !wasAsked(project, opening, key))
  );
}

/** Whether a question asked now is asked for the order alone; what the building does to the door, no answer here mends. */
export function asksForOrder({ alone }: Decision): boolean {
  return alone.state === 'settled';
}

/** Said over a question that no decision waits for. */
export const askedForOrder = 'Asked for the order: no answer to it changes the arrangement.';
