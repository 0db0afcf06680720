import { isForbiddenByHand } from '../decide/byHand.ts';
import type { Decision, Rejection } from '../decide/decision.ts';
import { stepsInWords } from '../words/steps.ts';
import { candidateInWords, releaseInWords } from '../words/arrangement.ts';
import { nothingNamedYet, stateWords } from '../words/states.ts';
import { unlawfulReleases } from '../devices/candidates.ts';
import { fieldInfo } from '../model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { orderState } from './forOrder.ts';
import { reviewState } from '../review/status.ts';
import { reviewStateWords } from '../review/words.ts';
import { midSentence } from '../text/midSentence.ts';
import { missingKeys } from './missing.ts';
import type { Decisions } from './openings.ts';

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

/** Why nothing is chosen, with the rules that stand against it. */
export function whyNone(decision: Decision): string {
  const said = (steps: Decision['refers']) =>
    stepsInWords(steps, decision)
      .map((words) => `${words.sentence} ${words.ruleId}`)
      .join(' ');
  switch (decision.state) {
    case 'refused': {
      const refusing = decision.findings.filter(
        ({ clause }) => clause.effect === 'finding' && clause.severity === 'refuse',
      );
      return said(refusing);
    }
    case 'referred':
      return said(decision.refers);
    case 'open':
      return nothingNamedYet;
    default: {
      const nearest = nearestOf(decision);
      if (!nearest) return stateWords[decision.state].means;
      const name = `${candidateInWords(nearest.candidate)} (${releaseInWords(nearest.candidate).toLowerCase()})`;
      return `Closest is: ${name}, ruled out because: ${said(nearest.because)}`;
    }
  }
}

/** What goes into the door and has the fewest rules against it; where nothing goes in, the first to fail. */
function nearestOf({ rejected }: Decision): Rejection | undefined {
  const against = ({ because }: Rejection) => {
    const rules = new Set(because.map((step) => step.rule.id));
    return rules.size + ([...rules].some((id) => id.startsWith('FIT-')) ? 100 : 0);
  };
  return rejected
    .filter(({ candidate }) => !unlawfulReleases.includes(candidate.release))
    .toSorted((a, b) => against(a) - against(b))[0];
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
