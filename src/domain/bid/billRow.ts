import type { ItemId } from '../devices/items.ts';
import type { Opening } from '../model/project.ts';
import type { Block } from '../sets/sets.ts';
import { cents } from './prices.ts';

/** One line of the bill. Money is in hundredths of the currency; null is a price nobody gave, never nothing. */
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
  readonly unit: Unit;
  readonly marks: readonly string[];
  readonly unitPrice: number | null;
  readonly amount: number | null;
}

export const unitWords = { each: 'each', ft: 'ft', hour: 'hr' } as const;
export type Unit = keyof typeof unitWords;

export interface Subtotal {
  readonly name: string;
  readonly amount: number;
  /** Lines without a price, which the amount leaves out. */
  readonly missing: number;
}

/** Something that costs at one opening. */
export interface Cost {
  readonly opening: Opening;
  readonly amount: number | null;
}
export const sum = (amounts: readonly (number | null)[]) =>
  amounts.reduce<number>((total, amount) => total + (amount ?? 0), 0);
export const amountOf = (price: number | null, quantity: number) =>
  price === null ? null : Math.round(cents(price) * quantity);

export function subtotals(costs: readonly Cost[], nameOf: (cost: Cost) => string): readonly Subtotal[] {
  const found = new Map<string, Cost[]>();
  for (const cost of costs) {
    const list = found.get(nameOf(cost));
    if (list) list.push(cost);
    else found.set(nameOf(cost), [cost]);
  }
  return [...found].map(([name, list]) => ({
    name,
    amount: sum(list.map(({ amount }) => amount)),
    missing: list.filter(({ amount }) => amount === null).length,
  }));
}

export function laidOutTotal(power: readonly BillRow[]): readonly Subtotal[] {
  if (power.length === 0) return [];
  const missing = power.filter((row) => row.amount === null).length;
  return [{ name: 'Power and cable of the building', amount: sum(power.map((row) => row.amount)), missing }];
}

export function tradeTotals(rows: readonly BillRow[]): readonly Subtotal[] {
  return [...new Set(rows.map((row) => row.trade))].map((name) => {
    const list = rows.filter((row) => row.trade === name);
    const missing = list.filter((row) => row.amount === null).length;
    return { name, amount: sum(list.map((row) => row.amount)), missing };
  });
}
