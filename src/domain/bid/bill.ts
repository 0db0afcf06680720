import { type ItemId, items, trades } from '../devices/items.ts';
import { countingOf } from '../decide/counting.ts';
import type { Arranged, Decision } from '../decide/decision.ts';
import { leavesOf } from '../decide/inPlace.ts';
import { partsOf } from '../decide/parts.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { powerPlan } from '../power/powerPlan.ts';
import { takeoffOf } from '../power/takeoff.ts';
import { type OrderState, orderState, orderStateWords } from '../schedules/forOrder.ts';
import { itemTerms } from '../schedules/itemTerms.ts';
import { type Member, detailOf } from '../schedules/setLines.ts';
import { type Block, blockOf, setNumbersOf } from '../schedules/sets.ts';
import { articleKey, cents, priceBook, type PriceBook } from './prices.ts';

/** One article of the bill. Money is in hundredths of the currency; null is a price nobody gave, never nothing. */
export interface BillRow {
  readonly key: string;
  readonly item: ItemId | null;
  readonly name: string;
  readonly detail: string;
  readonly block: Block;
  readonly trade: string;
  readonly section: string;
  readonly finish: string;
  readonly keySet: string;
  readonly quantity: number;
  readonly unit: 'each' | 'ft';
  readonly marks: readonly string[];
  readonly unitPrice: number | null;
  readonly amount: number | null;
}

export interface Subtotal {
  readonly name: string;
  readonly amount: number;
  /** Lines without a price, which the amount leaves out. */
  readonly missing: number;
}

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
  /** Articles without a price, in the order of the bill. */
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
interface Piece extends Bought {
  readonly opening: Opening;
  readonly decision: Decision;
}

/** Counted by the electrical layout, not opening by opening. */
const laidOut: readonly ItemId[] = ['lockCable', 'lockSupply', 'accessController'];

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
    boughtAt(decision, book).map((one): Piece => ({ ...one, opening, decision })),
  );
  const power = powerRows(
    project,
    decisions,
    ordered.map((one) => one.opening.mark),
    book,
  );
  const rows = [...rowsOf(project, pieces), ...power];
  const base = sum(rows.map((row) => row.amount));
  const markUp = share(base, project.bid.markUpPercent);
  const tax = share(base + markUp, project.bid.taxPercent);
  const floorOf = ({ opening }: Piece) => project.floors[opening.floorId ?? '']?.name ?? 'Floor not stated';
  return {
    rows,
    byFloor: [...subtotals(pieces, floorOf), ...laidOutTotal(power)],
    bySet: [...subtotals(pieces, ({ opening }) => sets.get(opening.id) ?? ''), ...laidOutTotal(power)],
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
export function boughtAt(decision: Arranged, book: PriceBook): readonly Bought[] {
  const parts = partsOf(decision);
  const leaves = leavesOf(decision);
  return parts.flatMap((part): Bought[] => {
    const { item, quantity } = part;
    if (countingOf(part, parts, leaves) !== 'bought' || blockOf(item) === 'duty' || laidOut.includes(item))
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
    amount: price === null ? null : cents(price) * quantity,
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
        amount: price === null ? null : cents(price) * many,
      };
    });
}

const sum = (amounts: readonly (number | null)[]) =>
  amounts.reduce<number>((total, amount) => total + (amount ?? 0), 0);
const share = (of: number, percent: number | null) => Math.round((of * (percent ?? 0)) / 100);

function subtotals(pieces: readonly Piece[], nameOf: (piece: Piece) => string): readonly Subtotal[] {
  const found = new Map<string, Piece[]>();
  for (const piece of pieces) found.set(nameOf(piece), [...(found.get(nameOf(piece)) ?? []), piece]);
  return [...found].map(([name, list]) => ({
    name,
    amount: sum(list.map(({ price, quantity }) => (price === null ? null : cents(price) * quantity))),
    missing: list.filter((piece) => piece.price === null).length,
  }));
}

function laidOutTotal(power: readonly BillRow[]): readonly Subtotal[] {
  if (power.length === 0) return [];
  const missing = power.filter((row) => row.amount === null).length;
  return [{ name: 'Power and cable of the building', amount: sum(power.map((row) => row.amount)), missing }];
}

function tradeTotals(rows: readonly BillRow[]): readonly Subtotal[] {
  return [...new Set(rows.map((row) => row.trade))].map((name) => {
    const list = rows.filter((row) => row.trade === name);
    const missing = list.filter((row) => row.amount === null).length;
    return { name, amount: sum(list.map((row) => row.amount)), missing };
  });
}

/** Null where a price is missing: a sum that leaves something out is no sum. */
export function comesTo(bought: readonly Bought[]): number | null {
  return bought.some((one) => one.price === null)
    ? null
    : sum(bought.map(({ price, quantity }) => cents(price ?? 0) * quantity));
}

/** What it comes to as it leads, and as its nearest alternative would: between the two lies the allowance. */
function allowanceOf(opening: Opening, decision: Decision, order: OrderState, book: PriceBook): Allowance {
  const because = decision.chosen ? order : 'noSet';
  const { chosen, runnerUp, slots, requires, aboutRunnerUp } = decision;
  const ways = [
    { chosen, slots, requires },
    { chosen: runnerUp, slots, requires: aboutRunnerUp?.requires ?? [] },
  ].flatMap((arranged) => (chosen && arranged.chosen ? [comesTo(boughtAt(arranged, book))] : []));
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
