import { type ItemId, itemOf, items, trades } from '../devices/items.ts';
import { countingOf } from '../hardware/counting.ts';
import type { Decision } from '../decide/decision.ts';
import type { Arranged } from '../hardware/arranged.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { partsOf } from '../hardware/parts.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { powerPlan } from '../power/powerPlan.ts';
import { takeoffOf } from '../power/takeoff.ts';
import { type OrderState, orderState, orderStateWords } from '../sets/forOrder.ts';
import { itemTerms } from '../hardware/itemTerms.ts';
import { type Member, detailOf } from '../sets/setLines.ts';
import { naturally } from '../sets/setGroups.ts';
import { blockOf, setNumbersOf } from '../sets/sets.ts';
import {
  amountOf,
  type BillRow,
  type Cost,
  laidOutTotal,
  type Subtotal,
  subtotals,
  sum,
  tradeTotals,
} from './billRow.ts';
import { laborAt, laborRows } from './laborRows.ts';
import { articleKey, cents, priceBook, type PriceBook } from './prices.ts';

/** An opening that is not in the base sum, with what it may come to. */
export interface Allowance {
  readonly openingId: string;
  readonly mark: string;
  readonly because: OrderState | 'noSet';
  /** Of what leads and its nearest alternatives; null where a price is missing or nothing can be chosen. */
  readonly low: number | null;
  readonly high: number | null;
}

export const allowanceWords: Record<Allowance['because'], string> = {
  ...orderStateWords,
  noSet: 'Nothing is chosen yet',
};

export interface Bill {
  readonly rows: readonly BillRow[];
  readonly byFloor: readonly Subtotal[];
  readonly bySet: readonly Subtotal[];
  readonly byTrade: readonly Subtotal[];
  readonly allowances: readonly Allowance[];
  /** Lines without a price, in the order of the bill. */
  readonly missing: readonly BillRow[];
  readonly base: number;
  readonly markUp: number;
  readonly tax: number;
  readonly total: number;
}

interface Bought {
  readonly key: string;
  readonly item: ItemId;
  readonly quantity: number;
  readonly price: number | null;
}
interface Piece extends Bought, Cost {
  readonly decision: Decision;
}
/** Everything that is bought or done at openings that may be ordered, priced by the project's own prices. */
export function billOf(project: Project, decisions: ReadonlyMap<string, Decision>): Bill {
  const book = priceBook(project);
  const sets = setNumbersOf(project, decisions);
  const openings = openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    return decision ? [{ opening, decision, order: orderState(project, opening, decision) }] : [];
  });
  const ordered = openings.filter((one) => one.order === 'complete' && one.decision.chosen);
  const pieces = ordered.flatMap(({ opening, decision }) =>
    boughtAt(decision, book).map(
      (one): Piece => ({ ...one, opening, decision, amount: amountOf(one.price, one.quantity) }),
    ),
  );
  const labor = ordered.flatMap(({ opening, decision }) =>
    laborAt(decision, book).map((one) => ({ ...one, opening })),
  );
  const costs: readonly Cost[] = [...pieces, ...labor];
  const power = powerRows(
    project,
    decisions,
    ordered.map((one) => one.opening.mark),
    book,
  );
  const rows = [...rowsOf(project, pieces), ...laborRows(labor), ...power];
  const base = sum(rows.map((row) => row.amount));
  const markUp = share(base, project.bid.markUpPercent);
  const tax = share(base + markUp, project.bid.taxPercent);
  const floorOf = ({ opening }: Cost) => project.floors[opening.floorId ?? '']?.name ?? 'Floor not stated';
  return {
    rows,
    byFloor: [...subtotals(costs, floorOf), ...laidOutTotal(power)],
    bySet: [
      ...subtotals(costs, ({ opening }) => sets.get(opening.id) ?? '').toSorted((a, b) =>
        naturally.compare(a.name, b.name),
      ),
      ...laidOutTotal(power),
    ],
    byTrade: tradeTotals(rows),
    allowances: openings
      .filter((one) => !ordered.includes(one))
      .map(({ opening, decision, order }) => allowanceOf(opening, decision, order, book)),
    missing: rows.filter((row) => row.amount === null),
    base,
    markUp,
    tax,
    total: base + markUp + tax,
  };
}

/** What one opening is bought and done with; duties come again and stand in no bill. */
function boughtAt(decision: Arranged, book: PriceBook): readonly Bought[] {
  const parts = partsOf(decision);
  const leaves = leavesOf(decision);
  return parts.flatMap((part): Bought[] => {
    const { item, quantity } = part;
    if (countingOf(part, parts, leaves) !== 'bought' || blockOf(item) === 'duty' || itemOf(item).laidOut)
      return [];
    const price = book.priceOf(item, decision);
    return [{ key: articleKey(item, decision), item, quantity, price }];
  });
}

function rowsOf(project: Project, pieces: readonly Piece[]): readonly BillRow[] {
  const byKey = new Map<string, Piece[]>();
  for (const piece of pieces) byKey.set(piece.key, [...(byKey.get(piece.key) ?? []), piece]);
  const order = Object.keys(items);
  return [...byKey]
    .toSorted(([, [a]], [, [b]]) => order.indexOf(a?.item ?? '') - order.indexOf(b?.item ?? ''))
    .flatMap(([key, list]) => {
      const [first] = list;
      return first ? [rowOf(project, key, first, list)] : [];
    });
}

function rowOf(project: Project, key: string, { item, price }: Piece, list: readonly Piece[]): BillRow {
  const members: Member[] = list.map(({ opening, decision }) => ({ mark: opening.mark, decision }));
  const terms = itemTerms(project, item);
  const quantity = list.reduce((total, piece) => total + piece.quantity, 0);
  return {
    key,
    item,
    name: items[item].name,
    detail: detailOf(item, members),
    block: blockOf(item),
    trade: trades[items[item].trade],
    section: terms.section,
    finish: terms.finish,
    keySet: terms.keySet,
    quantity,
    unit: 'each',
    marks: list.map((piece) => piece.opening.mark),
    unitPrice: price === null ? null : cents(price),
    amount: amountOf(price, quantity),
  };
}

/** Cable, supplies, batteries and panels as the layout of the whole building counts them. */
function powerRows(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  marks: readonly string[],
  book: PriceBook,
): readonly BillRow[] {
  const kinds = ['cable', 'supply', 'battery', 'controller', 'suppressor'];
  return takeoffOf(powerPlan(project, decisions))
    .articles.filter(({ kind }) => kinds.includes(kind))
    .map(({ kind, article, quantity, unit, by }): BillRow => {
      const key = `${kind}/${article}`.slice(0, 64);
      const price = book.priceOfKey(key);
      const many = Math.ceil(quantity);
      return {
        key,
        item: null,
        name: article,
        detail: 'for all openings of the building',
        block: 'goods',
        trade: by.furnished,
        section: by.section,
        finish: '',
        keySet: '',
        quantity: many,
        unit: unit === 'ft' ? 'ft' : 'each',
        marks,
        unitPrice: price === null ? null : cents(price),
        amount: amountOf(price, many),
      };
    });
}

const share = (of: number, percent: number | null) => Math.round((of * (percent ?? 0)) / 100);

/** Goods, work and labor of one arrangement; null where a price is missing: a sum that leaves something out is no sum. */
export function comesTo(arranged: Arranged, book: PriceBook): number | null {
  const amounts = [
    ...boughtAt(arranged, book).map(({ price, quantity }) => amountOf(price, quantity)),
    ...laborAt(arranged, book).map(({ amount }) => amount),
  ];
  return amounts.includes(null) ? null : sum(amounts);
}

/** What it comes to as it leads, and as its nearest alternative would: between the two lies the allowance. */
function allowanceOf(opening: Opening, decision: Decision, order: OrderState, book: PriceBook): Allowance {
  const because = decision.chosen ? order : 'noSet';
  const { chosen, runnerUp, slots, requires, aboutRunnerUp } = decision;
  const ways = [
    { chosen, slots, requires },
    { chosen: runnerUp, slots, requires: aboutRunnerUp?.requires ?? [] },
  ].flatMap((arranged) => (chosen && arranged.chosen ? [comesTo(arranged, book)] : []));
  const known = ways.filter((way) => way !== null);
  const whole = known.length === ways.length && known.length > 0;
  return {
    openingId: opening.id,
    mark: opening.mark,
    because,
    low: whole ? Math.min(...known) : null,
    high: whole ? Math.max(...known) : null,
  };
}
