import { isForbiddenByHand } from '../decide/byHand.ts';
import type { Decision, Decisions } from '../decide/decision.ts';
import { stateWords } from '../words/states.ts';
import { whyNone } from '../words/whyNone.ts';
import { fieldInfo } from '../model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { orderState } from './forOrder.ts';
import { reviewState } from '../review/status.ts';
import { reviewStateWords } from '../review/words.ts';
import { midSentence } from '../text/midSentence.ts';
import { missingKeys } from './missing.ts';

export interface WithoutSet {
  readonly mark: string;
  /** "Refused", "To a reviewer", "No workable hardware". */
  readonly state: string;
  readonly because: string;
}

/** Openings whose parts nobody can count yet, each with what has to happen first. */
export function withoutSet(project: Project, decisions: Decisions): readonly WithoutSet[] {
  return openingsInOrder(project).flatMap(({ id, mark }) => {
    const decision = decisions.get(id);
    if (!decision || decision.chosen || decision.state === 'left') return [];
    return [{ mark, state: stateWords[decision.state].word, because: whyNone(decision) }];
  });
}

/** What an opening waits for before its parts may be ordered; empty when its order is complete. */
export function waitsFor(project: Project, opening: Opening, decision: Decision): string {
  const state = orderState(project, opening, decision);
  if (state === 'complete') return '';
  if (decision.severe.length > 0) return decision.severe.map((one) => one.says).join(' ');
  const labels = missingKeys(project, opening, decision).map((key) => fieldInfo(key).label.toLowerCase());
  if (labels.length > 0) return `not surveyed: ${labels.join(', ')}`;
  if (state === 'unsigned')
    return midSentence(reviewStateWords[reviewState(project, opening, decision).state]);
  return isForbiddenByHand(decision) ? 'refused by rule, chosen by a person' : 'a rule is in doubt';
}
