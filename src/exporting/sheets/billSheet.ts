import { allowanceWords, type Bill } from '../../domain/bid/bill.ts';
import { type BillRow, type Subtotal, unitWords } from '../../domain/bid/billRow.ts';
import type { Alternate } from '../../domain/bid/alternates.ts';
import { moneyInWords } from '../../domain/bid/prices.ts';
import type { Project } from '../../domain/model/project.ts';
import { type Block, blocks } from '../../domain/sets/sets.ts';
import { counted } from '../../domain/text/counted.ts';

export interface BillLine {
  readonly key: string;
  readonly quantity: string;
  readonly unit: string;
  readonly name: string;
  readonly detail: string;
  readonly finish: string;
  readonly section: string;
  readonly trade: string;
  /** Empty on a bidder’s copy. */
  readonly unitPrice: string;
  readonly amount: string;
}
export interface BillSheet {
  readonly says: string;
  readonly priced: boolean;
  readonly blocks: readonly {
    readonly head: string;
    readonly says: string;
    readonly lines: readonly BillLine[];
  }[];
  /** Name and amount, in groups with a head; empty on a bidder’s copy. */
  readonly totals: readonly {
    readonly head: string;
    readonly lines: readonly (readonly [string, string])[];
  }[];
  readonly allowances: readonly { readonly mark: string; readonly because: string; readonly range: string }[];
  readonly alternates: readonly (readonly [string, string])[];
  readonly notes: readonly string[];
}

/** Without prices it is the copy that goes out to bidders: quantities to be priced, and no figure of money anywhere. */
export function billSheet(
  project: Project,
  bill: Bill,
  alternates: readonly Alternate[],
  priced: boolean,
): BillSheet {
  const money = (amount: number | null) => moneyInWords(project, amount);
  const lineOf = (row: BillRow): BillLine => ({
    key: row.key,
    quantity: new Intl.NumberFormat(project.bid.locale).format(row.quantity),
    unit: unitWords[row.unit],
    name: row.name,
    detail: row.detail,
    finish: [row.finish, row.keySet].filter((one) => one !== '').join(' · '),
    section: row.section,
    trade: row.trade,
    unitPrice: priced ? money(row.unitPrice) : '',
    amount: priced ? money(row.amount) : '',
  });
  const rows = (block: Block) => bill.rows.filter((row) => row.block === block);
  return {
    says: counted(bill.rows.length, 'line item'),
    priced,
    blocks: (['goods', 'work'] as const)
      .filter((block) => rows(block).length > 0)
      .map((block) => ({
        head: blocks[block],
        says: counted(rows(block).length, 'line item'),
        lines: rows(block).map(lineOf),
      })),
    totals: priced ? totalsOf(project, bill) : [],
    allowances: bill.allowances.map(({ mark, because, low, high }) => ({
      mark,
      because: allowanceWords[because],
      range: !priced
        ? ''
        : low === null || high === null
          ? 'no range: price missing'
          : rangeOf(money, low, high),
    })),
    alternates: priced ? alternates.map(({ says, saves }) => [says, money(saves)] as const) : [],
    notes: notesOf(project, bill, priced),
  };
}

const rangeOf = (money: (amount: number) => string, low: number, high: number) =>
  low === high ? money(low) : `${money(low)} to ${money(high)}`;

function totalsOf(project: Project, bill: Bill): BillSheet['totals'] {
  const money = (amount: number) => moneyInWords(project, amount);
  const { taxPercent, markUpPercent } = project.bid;
  const lines = (list: readonly Subtotal[]) =>
    list.map(({ name, amount, missing }) => {
      const without = missing === 0 ? '' : ` (${counted(missing, 'price')} missing)`;
      return [name, `${money(amount)}${without}`] as const;
    });
  return [
    { head: 'By floor', lines: lines(bill.byFloor) },
    { head: 'By hardware set', lines: lines(bill.bySet) },
    { head: 'By trade', lines: lines(bill.byTrade) },
    {
      head: 'In all',
      lines: [
        ['Sum of what is priced', money(bill.base)],
        [markUpPercent === null ? 'Mark-up: not stated' : `Mark-up ${markUpPercent} %`, money(bill.markUp)],
        [taxPercent === null ? 'Tax: not stated' : `Tax ${taxPercent} %`, money(bill.tax)],
        [
          bill.missing.length === 0
            ? 'Total'
            : `Total without ${counted(bill.missing.length, 'missing price')}`,
          money(bill.total),
        ],
      ],
    },
  ];
}

function notesOf({ prices }: Project, bill: Bill, priced: boolean): readonly string[] {
  const by = [...new Set(Object.values(prices).flatMap((price) => price.by ?? []))].toSorted();
  const missing = bill.missing.map((row) => row.name);
  return [
    'In the sum stand the openings that may be ordered. Every other opening is listed as an allowance.',
    'Recurring duties, leaves and frames that stay, and what the survey saw in place are not in it.',
    ...(priced
      ? [
          'Prices are the project’s own; none comes with the program.',
          ...(by.length > 0 ? [`Prices entered by: ${by.join('; ')}.`] : []),
          missing.length === 0
            ? 'No price is missing.'
            : `${counted(missing.length, 'price')} missing, and in no sum: ${[...new Set(missing)].join('; ')}.`,
        ]
      : ['Quantities only: each bidder fills in prices.']),
  ];
}
