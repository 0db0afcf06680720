import type { Product } from '../model/power.ts';
import type { Project } from '../model/project.ts';
import { type LoadClassId, loadClasses } from './loadClasses.ts';

/** What one device draws, and what its listing says: from the project’s product book, or by its class. */
export interface Rating {
  readonly name: string;
  readonly steadyA: number;
  readonly peakA: number;
  /** The least volts at which it still works. */
  readonly leastVolts: number;
  readonly current: 'dc' | 'ac';
  /** Null: nobody said. A class that is no bare coil needs none. */
  readonly suppressor: 'builtIn' | 'none' | null;
  readonly product: Product | undefined;
  readonly source: string;
}

/** Without a listing that says more, a device works down to 10 % below its rated volts. Maker’s wire guide, read. */
const usualShare = 0.9;

/** Products by what they are and their volts. Two rows for one thing: the one entered later counts. */
export type Book = ReadonlyMap<string, Product>;
const keyOf = (of: string, volts: number) => `${of} ${volts}`;

export function bookOf({ productBook }: Pick<Project, 'productBook'>): Book {
  const rows = Object.values(productBook).toSorted((a, b) => {
    const [first, second] = [a.at ?? '', b.at ?? ''];
    return first < second ? -1 : first > second ? 1 : a.id < b.id ? -1 : 1;
  });
  return new Map(rows.map((row) => [keyOf(row.of, row.volts), row]));
}

/** Undefined where the class is not made for these volts and the book names no product that is. */
export function ratingOf(of: LoadClassId, volts: 12 | 24, book: Book): Rating | undefined {
  const found = loadClasses.get(of);
  if (!found) return undefined;
  const product = book.get(keyOf(of, volts));
  if (product) {
    const name = [product.maker, product.part].filter((word) => word !== '').join(' ');
    return {
      name: `${found.name} (${name})`,
      steadyA: product.steadyA,
      peakA: Math.max(product.steadyA, product.peakA ?? product.steadyA),
      leastVolts: product.leastVolts ?? usualShare * volts,
      current: product.current,
      suppressor: found.coil ? product.suppressor : 'builtIn',
      product,
      source: 'product book',
    };
  }
  const [steadyA, peakA] = volts === 12 ? [found.a12, found.peak12] : [found.a24, found.peak24];
  if (steadyA === null || peakA === null) return undefined;
  return {
    name: found.name,
    steadyA,
    peakA,
    leastVolts: usualShare * volts,
    current: 'dc',
    suppressor: found.coil ? null : 'builtIn',
    product: undefined,
    source: found.source,
  };
}
