import type { Decision } from '../decide/decision.ts';
import { couldStillChange } from '../decide/whatMatters.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { isRelevant } from './relevance.ts';

interface Asked {
  readonly key: FactKey;
  readonly label: string;
}

/** What is said once nothing more is asked, and which answers of "not known" keep it from being the last word. */
export interface SurveyEnd {
  readonly says: string;
  readonly couldChange: readonly Asked[];
  /** No decision waits for these, but the surveyor who leaves without them has to come back. */
  readonly alsoNeeded: readonly Asked[];
}

export const alsoNeededInWords = 'Before you leave: orders, drawings and loads also need';

export function surveyEnd(project: Project, opening: Opening, decision: Decision): SurveyEnd {
  const couldChange = couldStillChange(project, opening, decision).map(asked);
  const alsoNeeded = orderFacts
    .filter((key) => opening.facts[key] === undefined && !decision.assumed.has(key))
    .filter((key) => isRelevant(key, decision.slots, project.basis, false))
    .map(asked);
  return { says: endInWords(decision, couldChange.length), couldChange, alsoNeeded };
}

/** What hardware is ordered by and a leaf is drawn from, whatever was decided. Common practice, no source. */
const orderFacts: readonly FactKey[] = [
  'leafWidthIn',
  'leafHeightIn',
  'handing',
  'leafMaterial',
  'frameMaterial',
  'inactiveBolts',
];

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
    return 'Nothing more needs to be asked; what leads ends badly for somebody, and that has to be mended first.';
  }
  if (decision.state === 'open') {
    return 'Nothing more can be asked here, and the decision stays provisional: what it waits for stands with its reasons.';
  }
  return 'Nothing more needs to be asked: every answer that could change this decision is known.';
}
