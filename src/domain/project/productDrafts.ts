import { type Product, productSchema } from '../model/power.ts';
import type { Project } from '../model/project.ts';
import { isLoadClass, loadClasses } from '../power/loadClasses.ts';
import { counted } from '../text/counted.ts';
import { type Read, refuse } from './places.ts';
import { figureIn, fitted } from './powerDrafts.ts';

/** A row of the product book as typed. */
export interface ProductDraft {
  readonly of: string;
  readonly maker: string;
  readonly part: string;
  readonly volts: string;
  readonly current: string;
  readonly steadyA: string;
  readonly peakA: string;
  readonly leastVolts: string;
  readonly suppressor: string;
  readonly listing: string;
  readonly price: string;
}
export const emptyProduct: ProductDraft = {
  of: '',
  maker: '',
  part: '',
  volts: '24',
  current: 'dc',
  steadyA: '',
  peakA: '',
  leastVolts: '',
  suppressor: '',
  listing: '',
  price: '',
};
const asText = (value: number | null) => (value === null ? '' : String(value));
export const productDraftOf = (row: Product): ProductDraft => ({
  of: row.of,
  maker: row.maker,
  part: row.part,
  volts: String(row.volts),
  current: row.current,
  steadyA: String(row.steadyA),
  peakA: asText(row.peakA),
  leastVolts: asText(row.leastVolts),
  suppressor: row.suppressor ?? '',
  listing: row.listing,
  price: asText(row.price),
});

export const classChoices: readonly (readonly [id: string, name: string])[] = [...loadClasses].map(
  ([id, { name }]) => [id, name],
);
export const suppressorChoices = [
  ['', 'Not known'],
  ['builtIn', 'Built in'],
  ['none', 'None'],
] as const;

export function readProduct(id: string, draft: ProductDraft): Read<Product> {
  if (!isLoadClass(draft.of)) return refuse('of', 'Choose what the product is.');
  const read = fitted<Product>(productSchema, {
    id,
    of: draft.of,
    maker: draft.maker.trim(),
    part: draft.part.trim(),
    volts: figureIn(draft.volts),
    current: draft.current === 'ac' ? 'ac' : 'dc',
    steadyA: figureIn(draft.steadyA),
    peakA: figureIn(draft.peakA),
    leastVolts: figureIn(draft.leastVolts),
    suppressor: draft.suppressor === '' ? null : draft.suppressor,
    listing: draft.listing.trim(),
    price: figureIn(draft.price),
  });
  if (!read.ok) return read;
  const { peakA, steadyA, leastVolts, volts } = read.value;
  if (peakA !== null && peakA < steadyA)
    return refuse('peakA', 'The peak cannot be below the steady current.');
  if (leastVolts !== null && leastVolts > volts)
    return refuse('leastVolts', 'The least voltage cannot be above the rated voltage.');
  return read;
}

/** Columns of a pasted list, in their order. */
export const pasteColumns = [
  'kind',
  'maker',
  'part',
  'volts',
  'amps',
  'peak amps',
  'least volts',
  'listing',
  'price',
] as const;

export interface Pasted {
  readonly rows: readonly Product[];
  /** One sentence for each line that could not be read; the others are taken. */
  readonly problems: readonly string[];
  readonly says: string;
}

/** Rows from a spreadsheet or a comma list, one product a line. A line that cannot be read is said and left out. */
export function readPasted(text: string, newId: () => string): Pasted {
  const rows: Product[] = [];
  const problems: string[] = [];
  text.split(/\r?\n/).forEach((line, at) => {
    if (line.trim() === '') return;
    const cells = line.split(line.includes('\t') ? '\t' : /[,;]/).map((cell) => cell.trim());
    const [
      kind = '',
      maker = '',
      part = '',
      volts = '',
      amps = '',
      peak = '',
      least = '',
      listing = '',
      price = '',
    ] = cells;
    // A heading is no product.
    if (at === 0 && figureIn(volts) === volts && figureIn(amps) === amps) return;
    const of = classChoices.find(
      ([id, name]) => id.toLowerCase() === kind.toLowerCase() || name.toLowerCase() === kind.toLowerCase(),
    )?.[0];
    if (of === undefined) {
      problems.push(`Line ${at + 1}: “${kind}” is no kind of device here.`);
      return;
    }
    const read = readProduct(newId(), {
      ...emptyProduct,
      of,
      maker,
      part,
      volts,
      steadyA: amps,
      peakA: peak,
      leastVolts: least,
      listing,
      price: price.replace(/^\$/, ''),
    });
    if (read.ok) rows.push(read.value);
    else problems.push(`Line ${at + 1}: ${read.says}`);
  });
  return { rows, problems, says: `${counted(rows.length, 'product')} read` };
}

/** The book in the order of its kinds. */
export function productsInOrder({ productBook }: Project): readonly Product[] {
  const order = classChoices.map(([id]) => id);
  return Object.values(productBook).toSorted(
    (a, b) => order.indexOf(a.of) - order.indexOf(b.of) || a.part.localeCompare(b.part, 'en'),
  );
}
export function productInWords(row: Product): string {
  const name = [row.maker, row.part].filter((word) => word !== '').join(' ');
  const figures = [
    `${row.volts} V ${row.current.toUpperCase()}`,
    `${row.steadyA} A`,
    row.peakA === null ? '' : `${row.peakA} A at its start`,
    row.leastVolts === null ? '' : `works from ${row.leastVolts} V`,
    row.listing,
  ];
  return `${loadClasses.get(row.of)?.name ?? row.of}: ${name}, ${figures.filter((word) => word !== '').join(', ')}`;
}
