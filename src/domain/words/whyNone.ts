import type { Decision, Rejection } from '../decide/decision.ts';
import { unlawfulReleases } from '../devices/candidates.ts';
import { candidateInWords, releaseInWords } from './arrangement.ts';
import { nothingNamedYet, stateWords } from './states.ts';
import { stepsInWords } from './steps.ts';

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
