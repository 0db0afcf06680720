import type { Project } from '../model/project.ts';
import { candidateInWords } from '../words/arrangement.ts';
import { midSentence } from '../text/midSentence.ts';
import { comesTo } from './bill.ts';
import type { OpeningWays } from './fewerSets.ts';
import { priceBook } from './prices.ts';

/** An arrangement that costs less by the project’s own prices, from the ranking of its opening. */
export interface Alternate {
  readonly mark: string;
  readonly saves: number;
  /** "102: electric strike … in place of the electromagnetic lock". */
  readonly says: string;
}

/** Alternates worth asking for, the largest saving first. One of an opening, and only where every price is known. */
export function alternatesOf(project: Project, all: readonly OpeningWays[]): readonly Alternate[] {
  const book = priceBook(project);
  return all
    .flatMap(({ opening, ways }): Alternate[] => {
      const priced = ways.map((way) => ({ way, cost: comesTo(way.decision, book) }));
      const own = priced[0]?.cost;
      if (own === null || own === undefined) return [];
      const [best] = priced
        .flatMap(({ way, cost }) => (cost !== null && cost < own ? [{ way, saves: own - cost }] : []))
        .toSorted((a, b) => b.saves - a.saves);
      const [now, instead] = [ways[0], best?.way].map((way) => way?.decision.chosen?.candidate);
      if (!best || !now || !instead) return [];
      const says = `${opening.mark}: ${midSentence(candidateInWords(instead))} in place of ${midSentence(candidateInWords(now))}`;
      return [{ mark: opening.mark, saves: best.saves, says }];
    })
    .toSorted((a, b) => b.saves - a.saves);
}
