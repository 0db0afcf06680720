import { itemOf, type ItemId, items } from '../devices/items.ts';
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

export const strikes: readonly ItemId[] = [
  'fireListedStrike',
  'continuousDutyStrike',
  'preloadStrike',
  'electricStrike',
];
const locksets: readonly ItemId[] = [
  'mortiseLock',
  'cylindricalLock',
  'mechanicalLock',
  'batteryLock',
  'narrowStileLatch',
  'keyLockMainDoor',
];
const bars: readonly ItemId[] = ['delayedExitDevice', 'glassRailExit'];
const latching: readonly ItemId[] = [
  ...locksets,
  ...bars,
  'storeroomLockset',
  'fireExitHardware',
  'panicHardware',
];

/**
 * Whether a line asks something of another line and is no piece of its own: two lines that one strike, lock or
 * bar fulfils must not be priced twice.
 */
export function isIncluded(item: ItemId, parts: readonly Counted[], leaves: number): boolean {
  if (itemOf(item).quality) return true;
  const has = (ids: readonly ItemId[]) => parts.some((part) => ids.includes(part.item));
  switch (item) {
    case 'continuousDutyStrike':
    case 'preloadStrike':
      return has(strikes.slice(0, strikes.indexOf(item)));
    case 'outsideUnlockKey':
      return has(['keyCylinder']);
    case 'storeroomLockset':
    case 'lockFromInside':
      return has(locksets);
    case 'latchingHardware':
      return has(latching);
    case 'fireExitHardware':
    case 'panicHardware':
      // On a pair with a bar of its own on one leaf, the other leaf still needs one.
      return parts.some((part) => bars.includes(part.item) && part.quantity >= leaves);
    default:
      return false;
  }
}
