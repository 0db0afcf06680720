import type { Decision } from '../decide/decision.ts';
import { couldStillChange } from '../decide/whatMatters.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { missingForOrder } from '../sets/forOrder.ts';

interface Asked {
  readonly key: FactKey;
  readonly label: string;
}

/** What is said once nothing more is asked, and which answers of "not known" keep it from being the last word. */
export interface SurveyEnd {
  readonly says: string;
  readonly couldChange: readonly Asked[];
  /** No decision waits for these, but nothing can be ordered before somebody has come back for them. */
  readonly alsoNeeded: readonly Asked[];
}

export const alsoNeededInWords = 'Before you leave: the order still needs';

export function surveyEnd(project: Project, opening: Opening, decision: Decision): SurveyEnd {
  const couldChange = couldStillChange(project, opening, decision).map(asked);
  const alsoNeeded = missingForOrder(project, opening, decision)
    .filter((key) => !couldChange.some((one) => one.key === key))
    .map(asked);
  return { says: endInWords(decision, couldChange.length), couldChange, alsoNeeded };
}

function asked(key: FactKey): Asked {
  return { key, label: fieldInfo(key).label };
}

function endInWords(decision: Decision, notKnown: number): string {
  if (decision.state === 'refused') {
    return 'Nothing more is asked until the contradiction in the survey is corrected.';
  }
  if (notKnown > 0) {
    return `Nothing more needs to be asked, but ${
      notKnown === 1 ? 'one answer of “not known”' : `${notKnown} answers of “not known”`
    } could still change this decision:`;
  }
  if (decision.state === 'severe') {
    return 'Nothing more needs to be asked; the leading option locks someone in or fails in a fire, and that must be fixed first.';
  }
  if (decision.state === 'open') {
    return 'Nothing more can be asked here, and the decision stays provisional: what it is waiting for is listed with its reasons.';
  }
  return 'Nothing more needs to be asked: every answer that could change this decision or its order is known.';
}
