import { itemOf, type ItemId, type Trade } from '../devices/items.ts';
import type { Arranged } from '../hardware/arranged.ts';
import { valueIn } from '../logic/slots.ts';
import type { Project } from '../model/project.ts';
import { type Book, bookOf } from '../power/productBook.ts';
import { articleOf } from '../hardware/article.ts';
import { counted } from '../text/counted.ts';

type Priced = Pick<Arranged, 'chosen' | 'slots'>;

/** The part number a line is priced by: item, and what makes it another article. */
export function articleKey(item: ItemId, decision: Priced): string {
  const { chosen } = decision;
  const kind =
    itemOf(item).electrified && chosen ? `${chosen.candidate.deviceId} ${chosen.candidate.failMode}` : '';
  const article = [kind, articleOf(item, decision)].filter((word) => word !== '').join(' ');
  return (article === '' ? item : `${item}/${article}`).slice(0, 64);
}

/** Where the project’s own rate for an hour of a trade stands among its prices. */
export const laborKey = (trade: Trade) => `labor/${trade}`;

/** Where a price is read: of the part number, of the item, or of the product the project named for the device. */
export interface PriceBook {
  readonly priceOf: (item: ItemId, decision: Priced) => number | null;
  readonly priceOfKey: (key: string) => number | null;
}

export function priceBook(project: Project): PriceBook {
  const products = bookOf(project);
  const priceOfKey = (key: string) =>
    Object.hasOwn(project.prices, key) ? (project.prices[key]?.amount ?? null) : null;
  return {
    priceOfKey,
    priceOf: (item, decision) =>
      priceOfKey(articleKey(item, decision)) ?? priceOfKey(item) ?? productPrice(item, decision, products),
  };
}

function productPrice(item: ItemId, { chosen, slots }: Priced, products: Book): number | null {
  if (!itemOf(item).electrified || !chosen) return null;
  const volts = valueIn(slots, 'supplyVolts');
  return products.get(`${chosen.candidate.deviceId} ${volts ?? ''}`)?.price ?? null;
}

/** Hundredths of the currency, so that sums come out to the cent. */
export const cents = (amount: number) => Math.round(amount * 100);

/** "$1,240.50", as the locale of the project writes its currency; a sum nobody can say is words. */
export function moneyInWords({ bid }: Pick<Project, 'bid'>, inCents: number | null): string {
  if (inCents === null) return 'price missing';
  const { locale, currency } = bid;
  return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(inCents / 100);
}

/**
 * What somebody typed as a price: figures with or without thousands marks, the currency of the project before or
 * behind. Words, a price below nothing, another currency and marks at another place than the locale puts them are said
 * and not taken: “12,5” may be twelve and a half or a slip.
 */
export function readPrice(
  { bid }: Pick<Project, 'bid'>,
  text: string,
): { readonly amount: number } | { readonly says: string } {
  const plain = text.trim();
  const other = /\b[a-z]{3}\b/i.exec(plain)?.[0].toUpperCase();
  if (other !== undefined && other !== bid.currency && currencies.has(other)) {
    return { says: `The bid is in ${bid.currency}; this price is in ${other}.` };
  }
  const figures = plain
    .replace(new RegExp(bid.currency, 'i'), '')
    .replaceAll(currencySign(bid), '')
    .replaceAll(/\s+/g, ' ')
    .trim();
  if (/\p{Sc}/u.test(figures))
    return { says: `The bid is in ${bid.currency}; this price carries another sign.` };
  const [group, point] = marksOf(bid);
  const [whole = '', decimals, ...more] = figures.split(point);
  const digits = whole.replaceAll(group, '');
  const isNumber =
    /^-?\d+$/.test(digits) && /^\d*$/.test(decimals ?? '') && decimals !== '' && more.length === 0;
  if (!isNumber || (whole !== digits && whole !== grouped(bid, Number(digits))))
    return { says: `A price is a number, such as ${example(bid)}.` };
  const places = placesOf(bid);
  if ((decimals ?? '').length > places)
    return { says: `A price in ${bid.currency} has no more than ${counted(places, 'decimal')}.` };
  const amount = Number(`${digits}.${decimals ?? ''}`);
  if (amount < 0) return { says: 'The price cannot be below 0.' };
  if (amount > 1_000_000) return { says: 'The price cannot be above 1,000,000.' };
  return { amount };
}

const currencies: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));

/** With the locale’s marks of thousands; a blank is a blank, however narrow. */
const grouped = ({ locale }: Project['bid'], whole: number) =>
  new Intl.NumberFormat(locale, { useGrouping: 'always' }).format(whole).replaceAll(/\s/g, ' ');

/** Two for most currencies, none for some. */
const placesOf = ({ locale, currency }: Project['bid']) =>
  new Intl.NumberFormat(locale, { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;

const example = ({ locale }: Project['bid']) =>
  new Intl.NumberFormat(locale, { minimumFractionDigits: 2 }).format(148.5);

function currencySign({ locale, currency }: Project['bid']): string {
  const parts = new Intl.NumberFormat(locale, { style: 'currency', currency }).formatToParts(0);
  return parts.find((part) => part.type === 'currency')?.value ?? currency;
}

function marksOf({ locale }: Project['bid']): readonly [string, string] {
  const parts = new Intl.NumberFormat(locale).formatToParts(12_345.6);
  const mark = (type: string, usual: string) =>
    (parts.find((part) => part.type === type)?.value ?? usual).replaceAll(/\s/g, ' ');
  return [mark('group', ','), mark('decimal', '.')];
}
