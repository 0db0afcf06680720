import type { Decision } from '../decide/decision.ts';
import { couldStillChange, openQuestions } from '../decide/whatMatters.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { missingForOrder } from './forOrder.ts';

/**
 * Unknown facts on which something still waits: those that decide, those that ask for an item or a signature, and, once
 * nothing can change the arrangement, those that an order waits for. Some rules hear a fact only when somebody recorded
 * it; where it was asked for and nobody could tell, it counts as well.
 */
export function missingKeys(project: Project, opening: Opening, decision: Decision): readonly FactKey[] {
  const { deciding, signing } = openQuestions(decision);
  const settled =
    decision.alone.state === 'settled'
      ? [...couldStillChange(project, opening, decision), ...missingForOrder(project, opening, decision)]
      : [];
  return [...new Set([...deciding.keys(), ...signing.keys(), ...settled])];
}
