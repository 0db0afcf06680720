import { decide } from '../decide/decide.ts';
import { nextToSettle, wasAsked } from '../decide/whatMatters.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { missingForOrder } from '../schedules/forOrder.ts';

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

/** Said over a question that no decision waits for. */
export const askedForOrder = 'Asked for the order: no answer to it changes the arrangement.';
