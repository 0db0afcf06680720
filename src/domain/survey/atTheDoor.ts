import type { Decision } from '../decide/decision.ts';
import { waysForward } from '../decide/whatWouldChange.ts';
import { noWayForward, wayInWords } from '../words/whatWouldChange.ts';
import { slotOf } from '../logic/slots.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { whyNone } from '../words/whyNone.ts';
import { valueInSentence } from '../text/format.ts';

/** What a surveyor needs to hear while still in front of the door, a line for each. */
export interface AtTheDoor {
  readonly rulesOut: string;
  readonly cheapest: string;
  /** What to look at now that would allow it; each can be asked at once. */
  readonly lookAt: readonly { readonly key: FactKey; readonly says: string }[];
}

/** Undefined where something stands or may stand. */
export function atTheDoor(project: Project, opening: Opening, decision: Decision): AtTheDoor | undefined {
  switch (decision.state) {
    case 'none': {
      const [way] = waysForward(project, opening, decision, 1);
      return {
        rulesOut: whyNone(decision),
        cheapest: way ? cheapestInWords(way) : noWayForward(decision),
        lookAt: (way?.changes ?? []).map(({ fact }) => lookAgain(fact, decision)),
      };
    }
    case 'refused': {
      const fields = decision.findings.flatMap(({ clause }) =>
        clause.effect === 'finding' && clause.severity === 'refuse' ? [clause.field] : [],
      );
      return {
        rulesOut: whyNone(decision),
        cheapest:
          'No work is needed before the survey is right: one of these answers is wrong, or the plan is.',
        lookAt: [...new Set(fields)].map((key) => lookAgain(key, decision)),
      };
    }
    default:
      return undefined;
  }
}

function cheapestInWords(way: Parameters<typeof wayInWords>[0]): string {
  const { name, work } = wayInWords(way);
  const lines = work.map(({ trade, lines: says }) => `${trade}: ${says.join(' ')}`);
  return `${name}. ${lines.join(' ')}`;
}

function lookAgain(key: FactKey, decision: Decision): AtTheDoor['lookAt'][number] {
  const value = decision.slots[slotOf(key)];
  const now = value === undefined ? 'not looked at yet' : `answered ${valueInSentence(key, value)}`;
  return { key, says: `${fieldInfo(key).ask} Now: ${now}.` };
}

export const atTheDoorWords = {
  rulesOut: 'What rules it out',
  cheapest: 'Cheapest change',
  lookAt: 'Look at now',
} as const;
