import type { Decision } from '../decide/decision.ts';
import { couldStillChange } from '../decide/whatMatters.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';

/** What is said once nothing more is asked, and which answers of "not known" keep it from being the last word. */
export interface SurveyEnd {
  readonly says: string;
  readonly couldChange: readonly { readonly key: FactKey; readonly label: string }[];
}

export function surveyEnd(project: Project, opening: Opening, decision: Decision): SurveyEnd {
  const couldChange = couldStillChange(project, opening, decision).map((key) => ({
    key,
    label: fieldInfo(key).label,
  }));
  return { says: endInWords(decision, couldChange.length), couldChange };
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
  if (decision.state === 'open') {
    return 'Nothing more can be asked here, and the decision stays provisional: what it waits for stands with its reasons.';
  }
  return 'Nothing more needs to be asked: every answer that could change this decision is known.';
}
