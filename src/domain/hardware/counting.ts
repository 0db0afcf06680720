import { itemOf, type ItemId, items, linksOf } from '../devices/items.ts';
import type { Part } from './parts.ts';

/**
 * How a line counts when parts are priced: bought by itself, included in another line, kept because it is there,
 * or a share of something bought once for several openings.
 */
export type Counting = 'bought' | 'included' | 'kept' | 'shared';
/** In place of a number of pieces, where a column is narrow. */
export const countingShort: Record<Exclude<Counting, 'bought'>, string> = {
  included: 'incl.',
  kept: 'kept',
  shared: 'share',
};
export const countingWords: Record<Counting, string> = {
  bought: 'By itself',
  included: 'Included in another line',
  kept: 'Kept in place',
  shared: 'Share of equipment listed once',
};

type Counted = Pick<Part, 'item' | 'quantity'>;

export function countingOf(part: Part, parts: readonly Part[], leaves: number): Counting {
  if (isIncluded(part.item, parts, leaves)) return 'included';
  if (part.kept) return 'kept';
  return 'shared' in items[part.item] ? 'shared' : 'bought';
}

/**
 * Whether a line asks something of another line and is no piece of its own: two lines that one strike, lock or
 * bar fulfils must not be priced twice.
 */
export function isIncluded(item: ItemId, parts: readonly Counted[], leaves: number): boolean {
  if (itemOf(item).quality) return true;
  const { within } = linksOf(item);
  if (within === undefined) return false;
  return parts.some((part) => {
    const { kind, latches } = itemOf(part.item);
    switch (within) {
      case 'lockset':
        return kind === 'lockset';
      case 'latch':
        return latches === true;
      case 'barOnEachLeaf':
        // On a pair with a bar of its own on one leaf, the other leaf still needs one.
        return kind === 'bar' && part.quantity >= leaves;
      default:
        return within.includes(part.item);
    }
  });
}
