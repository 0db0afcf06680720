import type { Decision } from '../decide/decision.ts';
import {
  mostChanges,
  planBehindRejection,
  type PlanSays,
  type Search,
  type WayForward,
} from '../decide/whatWouldChange.ts';
import { type Trade, trades } from '../devices/items.ts';
import { fieldInfo } from '../model/fields.ts';
import { midSentence } from '../text/midSentence.ts';
import { arrangementInWords } from './arrangement.ts';

/** A way forward in words, the work by trade. */
export interface WayWords {
  readonly candidateId: string;
  readonly name: string;
  readonly work: readonly { readonly trade: string; readonly lines: readonly string[] }[];
}

export function wayInWords({ candidate, changes }: WayForward): WayWords {
  return {
    candidateId: candidate.id,
    name: arrangementInWords(candidate),
    work: (Object.keys(trades) as Trade[]).flatMap((trade) => {
      const lines = changes.filter((one) => one.trade === trade).map((one) => one.says);
      return lines.length > 0 ? [{ trade: trades[trade], lines }] : [];
    }),
  };
}

function planWouldHaveToChange(plan: readonly PlanSays[]): string {
  const told = plan.map(({ fact, from }) => `${midSentence(fieldInfo(fact).label)} (${from})`);
  const once = [...new Set(told)];
  return once.length === 0 ? '' : ` The plan would have to change first: ${once.join('; ')}.`;
}

/** Said where `waysForward` finds nothing. */
export function noWayForward(decision: Decision): string {
  const because = decision.rejected.flatMap((one) => one.because);
  return `${nothingHelps}${planWouldHaveToChange(planBehindRejection(decision, because))}`;
}
const nothingHelps = `No ${mostChanges} physical changes would let the rules here allow anything: the location, the use or the code rules it out. Take it to a reviewer.`;

/** The work as lines for the trades, or one line saying that no work up to the bound helps. */
export function admissionInWords(search: Search): readonly string[] {
  if (search.found) return search.changes.map((one) => `${trades[one.trade]}: ${one.says}`);
  const tried = search.tried > 0 ? ` (${search.tried} combinations tried)` : '';
  return [
    `No ${mostChanges} physical changes would allow it${tried}: the location, the use or the code rules it out.${planWouldHaveToChange(search.plan)}`,
  ];
}
