import { sectionOfTrade, type Trade, trades } from '../devices/items.ts';
import type { Arranged } from '../hardware/arranged.ts';
import { laborHours } from '../hardware/labor.ts';
import { amountOf, type BillRow, type Cost, sum } from './billRow.ts';
import { cents, laborKey, type PriceBook } from './prices.ts';

interface Labor {
  readonly trade: Trade;
  readonly hours: number;
  readonly rate: number | null;
  readonly amount: number | null;
}

/** Hours of each trade at one opening, at the project’s own rates. */
export function laborAt(decision: Arranged, book: PriceBook): readonly Labor[] {
  return [...laborHours(decision)].map(([trade, hours]) => {
    const rate = book.priceOfKey(laborKey(trade));
    return { trade, hours, rate, amount: amountOf(rate, hours) };
  });
}

export function laborRows(all: readonly (Labor & Cost)[]): readonly BillRow[] {
  return (Object.keys(trades) as Trade[]).flatMap((trade): readonly BillRow[] => {
    const list = all.filter((one) => one.trade === trade);
    const [first] = list;
    if (!first) return [];
    return [
      {
        key: laborKey(trade),
        item: null,
        name: `Labor, ${trades[trade].toLowerCase()}`,
        detail: 'hours to set the locks, from the fit table; common practice, no source',
        block: 'work',
        trade: trades[trade],
        section: sectionOfTrade[trade],
        finish: '',
        keySet: '',
        quantity: list.reduce((total, { hours }) => total + hours, 0),
        unit: 'hour',
        marks: list.map(({ opening }) => opening.mark),
        unitPrice: first.rate === null ? null : cents(first.rate),
        amount: first.rate === null ? null : sum(list.map(({ amount }) => amount)),
      },
    ];
  });
}
