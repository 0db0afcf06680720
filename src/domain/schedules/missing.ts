import type { Decision } from '../decide/decision.ts';
import { openQuestions } from '../decide/whatMatters.ts';
import type { FactKey } from '../model/fields.ts';

/** Unknown facts on which something still waits: first those that decide, then those that ask for a reviewer. */
export function missingKeys(decision: Decision): readonly FactKey[] {
  const { deciding, signing } = openQuestions(decision);
  return [...new Set([...deciding.keys(), ...signing.keys()])];
}
