import { trades, type Trade } from '../devices/items.ts';
import { fillSentence } from '../text/format.ts';
import { fitNotes } from '../fit/notes.ts';
import type { Decision } from '../decide/decision.ts';
import { workNotes } from '../hardware/workNotes.ts';
import type { Member } from './setLines.ts';

/** Work on door or frame that is no piece of hardware and has its price all the same. */
export interface SiteWork {
  readonly trade: string;
  readonly says: string;
  /** Rule that asks for it; empty for what the fit of the device asks. */
  readonly ruleId: string;
  /** Openings of the set where it is done. */
  readonly marks: readonly string[];
}

/** Work required at the openings of a set: alike in their parts, they may differ in what is cut or changed. */
export function siteWork(members: readonly Member[]): readonly SiteWork[] {
  const found = new Map<string, SiteWork & { readonly marks: string[] }>();
  for (const { mark, decision } of members) {
    for (const job of jobsAt(decision)) {
      const key = `${job.trade} ${job.says}`;
      const known = found.get(key);
      if (!known) found.set(key, { ...job, marks: [mark] });
      else if (!known.marks.includes(mark)) known.marks.push(mark);
    }
  }
  return [...found.values()];
}

function jobsAt(decision: Decision): readonly Omit<SiteWork, 'marks'>[] {
  const job = (trade: Trade, says: string, ruleId = '') => ({ trade: trades[trade], says, ruleId });
  return [
    ...workNotes(decision).flatMap((note) => {
      const found = fitNotes[note];
      return found ? [job(found.trade, found.says)] : [];
    }),
    ...decision.modifies.flatMap(({ clause, rule }) =>
      clause.effect === 'modify'
        ? [job(clause.trade, fillSentence(clause.says, decision.slots), rule.id)]
        : [],
    ),
  ];
}
