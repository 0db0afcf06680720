import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { decideAll } from '../../domain/decide/decide.ts';
import { laborHours } from '../../domain/hardware/labor.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Project } from '../../domain/model/project.ts';
import { billSheet } from './billSheet.ts';
import { openProjectText } from '../../domain/versions/file.ts';
import { type Bill, billOf } from '../../domain/bid/bill.ts';
import { moneyInWords, readPrice } from '../../domain/bid/prices.ts';

let demo: Project;
let decisions: ReadonlyMap<string, Decision>;
let bare: Bill;
beforeAll(() => {
  const opened = openProjectText(readFileSync('demo-data/demo-building.json', 'utf8'));
  if (!opened.ok) throw new Error('The demo building does not open.');
  demo = { ...opened.project, prices: {} };
  decisions = decideAll(demo);
  bare = billOf(demo, decisions);
}, 60_000);
const pricedAt = (amount: number, bid: Partial<Project['bid']> = {}): Project => ({
  ...demo,
  prices: Object.fromEntries(bare.rows.map((row) => [row.key, { id: row.key, amount }])),
  bid: { ...demo.bid, ...bid },
});

describe('bill of quantities', () => {
  it('has no price of its own: each is missing, listed and in no sum', () => {
    expect(bare.rows.length).toBeGreaterThan(10);
    expect(bare.missing).toEqual(bare.rows);
    expect([bare.base, bare.total]).toEqual([0, 0]);
    for (const row of bare.rows) expect([row.unitPrice, row.amount]).toEqual([null, null]);
    expect(billSheet(demo, bare, [], true).notes.join(' ')).toMatch(/\d+ prices missing, and in no sum/);
  });

  it('multiplies, and its sums by floor, set and trade are the base each time', () => {
    const bill = billOf(pricedAt(10.04), decisions);
    const all = (list: readonly { readonly amount: number }[]) =>
      list.reduce((sum, one) => sum + one.amount, 0);
    expect(bill.missing).toEqual([]);
    expect(bill.base).toBe(bare.rows.reduce((sum, row) => sum + row.quantity * 1004, 0));
    const numbers = bill.bySet.flatMap(({ name }) => /^HS-(\d+)$/.exec(name)?.[1] ?? []).map(Number);
    expect(numbers.length).toBeGreaterThan(10);
    expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
    expect([all(bill.byFloor), all(bill.bySet), all(bill.byTrade)]).toEqual([
      bill.base,
      bill.base,
      bill.base,
    ]);
  });

  it('counts hours by trade, at rates of the project’s own; without a rate they are missing', () => {
    const labor = bare.rows.filter((row) => row.unit === 'hour');
    expect(labor.map((row) => row.name)).toContain('Labor, locksmith');
    expect(bare.missing).toEqual(expect.arrayContaining(labor));
    const locksmith = labor.find((row) => row.key === 'labor/locksmith');
    const counted = Object.values(demo.openings).filter(({ mark }) => locksmith?.marks.includes(mark));
    const sum = counted.reduce((total, { id }) => {
      const decision = decisions.get(id);
      return total + (decision ? (laborHours(decision).get('locksmith') ?? 0) : 0);
    }, 0);
    expect(sum).toBeGreaterThan(20);
    expect(locksmith?.quantity).toBe(sum);
    const prices = { 'labor/locksmith': { id: 'labor/locksmith', amount: 92 } };
    const priced = billOf({ ...demo, prices }, decisions).rows.find((row) => row.key === 'labor/locksmith');
    expect(priced?.amount).toBe(Math.round(9200 * (locksmith?.quantity ?? 0)));
  });

  it('leaves a missing price out of the sum and says so beside the floor it is missing on', () => {
    const project = pricedAt(10);
    const [gone] = bare.rows.filter((row) => row.item !== null);
    const prices = Object.fromEntries(Object.entries(project.prices).filter(([key]) => key !== gone?.key));
    const bill = billOf({ ...project, prices }, decisions);
    expect(bill.missing.map((row) => row.key)).toEqual([gone?.key]);
    expect(bill.base).toBe(bare.rows.reduce((sum, row) => sum + (row === gone ? 0 : row.quantity * 1000), 0));
    expect(bill.byFloor.some((floor) => floor.missing > 0)).toBe(true);
  });

  it('takes the price of the part number before that of the item', () => {
    const row = bare.rows.find((one) => one.item === 'electricStrike' && one.key !== one.item);
    if (!row?.item) throw new Error('no strike');
    const of = (prices: Project['prices']) =>
      billOf({ ...demo, prices }, decisions).rows.find((one) => one.key === row.key)?.unitPrice;
    const item = { electricStrike: { id: 'electricStrike', amount: 200 } };
    expect(of(item)).toBe(20_000);
    expect(of({ ...item, [row.key]: { id: row.key, amount: 0 } })).toBe(0);
  });

  it('adds mark-up, then tax on both, and nothing where nobody said how much', () => {
    const bill = billOf(pricedAt(1, { markUpPercent: 10, taxPercent: 8 }), decisions);
    expect(bill.markUp).toBe(Math.round(bill.base / 10));
    expect(bill.tax).toBe(Math.round(((bill.base + bill.markUp) * 8) / 100));
    expect(bill.total).toBe(bill.base + bill.markUp + bill.tax);
    const untold = pricedAt(1, { markUpPercent: null, taxPercent: null });
    expect(billOf(untold, decisions).total).toBe(bill.base);
  });

  it('puts no opening into the sum that may not be ordered, and names each with a range', () => {
    const bill = billOf(pricedAt(10), decisions);
    const counted = new Set(bill.rows.filter((row) => row.item !== null).flatMap((row) => row.marks));
    expect(bill.allowances.length).toBeGreaterThan(5);
    for (const { mark, low, high } of bill.allowances) {
      expect(counted.has(mark)).toBe(false);
      expect(low ?? 0).toBeLessThanOrEqual(high ?? 0);
    }
    expect(bill.allowances.length + counted.size).toBeLessThanOrEqual(decisions.size);
    expect(bill.allowances.find((one) => one.mark === '404A')).toMatchObject({ because: 'noSet', low: null });
  });

  it('shows no figure of money on a bidder’s copy, whatever is priced', () => {
    const project = pricedAt(123_457.89, { markUpPercent: 13, taxPercent: 7 });
    const bill = billOf(project, decisions);
    const alternates = [{ mark: '102', saves: 4_200, says: 'one for another' }];
    const text = JSON.stringify(billSheet(project, bill, alternates, false));
    expect(text).not.toMatch(/[$€£]|123,?457|\bUSD\b|mark-up|tax\b/i);
    expect(JSON.stringify(billSheet(project, bill, alternates, true))).toContain('$123,457.89');
  });
});

describe('a price that is typed', () => {
  const bid = () => demo.bid;
  it.each([
    ['148.50', 148.5],
    ['$1,148.50', 1148.5],
    ['USD 20', 20],
    ['0', 0],
  ])('%s is read', (text, amount) => {
    expect(readPrice({ bid: bid() }, text)).toEqual({ amount });
  });
  it.each([
    ['about 20', /is a number/],
    ['-3', /cannot be below 0/],
    ['EUR 20', /in USD; this price is in EUR/],
    ['€20', /another sign/],
    ['', /is a number/],
    ['2000000', /cannot be above/],
    ['(5.00)', /is a number/],
    ['20 eur', /in USD; this price is in EUR/],
    ['20 euros', /is a number/],
    // A comma for the cents, as other countries write it, is no mark of thousands.
    ['1.234,50', /is a number/],
    ['12,5', /is a number/],
    ['1,23,456', /is a number/],
    ['10 20', /is a number/],
    ['0.185', /no more than 2 decimals/],
  ])('%s is refused at the row', (text, says) => {
    expect(readPrice({ bid: bid() }, text)).toEqual({ says: expect.stringMatching(says) });
  });
  it('comes back from the words it is written in, in any locale', () => {
    const places = [
      ['en-US', 'USD'],
      ['en-CA', 'CAD'],
      ['de-DE', 'EUR'],
      ['fr-FR', 'EUR'],
      ['en-IN', 'INR'],
      ['ja-JP', 'JPY'],
    ] as const;
    for (const [locale, currency] of places) {
      const project = { bid: { ...bid(), locale, currency } };
      for (const inCents of [0, 1900, 14_800, 1_234_500, 99_999_900])
        expect([locale, readPrice(project, moneyInWords(project, inCents))]).toEqual([
          locale,
          { amount: inCents / 100 },
        ]);
    }
  });
  it('is written and read as the locale does', () => {
    const german = { bid: { ...bid(), locale: 'de-DE', currency: 'EUR' } };
    expect(readPrice(german, '1.148,50 €')).toEqual({ amount: 1148.5 });
    expect(moneyInWords(german, 114_850)).toMatch(/^1\.148,50\s€$/);
    expect(moneyInWords(german, null)).toBe('price missing');
  });
});
