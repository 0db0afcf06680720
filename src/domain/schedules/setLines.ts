import type { ItemId } from '../devices/items.ts';
import { valueIn } from '../decide/factView.ts';
import type { Decision } from '../decide/decision.ts';
import type { Part } from '../decide/parts.ts';
import { candidateInWords } from '../decide/words.ts';
import { valueInWords } from '../explain/format.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';

/** An opening of a set, with what was decided for it. */
export interface Member {
  readonly mark: string;
  readonly decision: Decision;
}

/** Items that are ordered left or right; with one of them in the list, openings of another hand need their own set. */
export const handedItems: ReadonlySet<ItemId> = new Set([
  'continuousHinge',
  'mortiseLock',
  'exitTrim',
  'delayedExitDevice',
  'narrowStileLatch',
  'gateLock',
  'glassRailExit',
  'batteryLock',
]);

const strikes: readonly ItemId[] = [
  'fireListedStrike',
  'continuousDutyStrike',
  'preloadStrike',
  'electricStrike',
];
const electrified: ReadonlySet<ItemId> = new Set([
  ...strikes,
  'magnetLock',
  'doubleMagnet',
  'delayedMagnet',
  'electricBolt',
  'mortiseLock',
  'cylindricalLock',
  'exitTrim',
  'latchRetraction',
  'delayedExitDevice',
  'glassLock',
  'glassRailExit',
  'narrowStileLatch',
  'gateLock',
]);
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

/** What these say is asked of other items, whatever else stands in the set. */
const onlyQualities: ReadonlySet<ItemId> = new Set([
  'fireLabelledHardware',
  'listedLock',
  'weatherRated',
  'powerLossRelease',
  'passageFunction',
  'insideRelease',
  'noInsideLock',
]);

/**
 * Whether a line asks something of another line and is no piece of its own: two lines that one strike, lock or
 * bar fulfils must not be priced twice.
 */
export function isIncluded(item: ItemId, parts: readonly Part[], leaves: number): boolean {
  if (onlyQualities.has(item)) return true;
  const has = (ids: readonly ItemId[]) => parts.some((part) => ids.includes(part.item));
  switch (item) {
    case 'continuousDutyStrike':
    case 'preloadStrike':
      return has(strikes.slice(0, strikes.indexOf(item)));
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

/** What has to be known to order the item, besides its name. */
export function detailOf(item: ItemId, members: readonly Member[]): string {
  const words: string[] = [];
  if (electrified.has(item)) {
    const chosen = members[0]?.decision.chosen;
    if (chosen) words.push(candidateInWords(chosen.candidate));
  }
  if (item === 'mechanicalLock' || item === 'storeroomLockset') {
    words.push(acrossMembers('latch', members), acrossMembers('handing', members));
  }
  if (handedItems.has(item)) words.push(acrossMembers('handing', members));
  if (electrified.has(item) || item === 'lockSupply') words.push(acrossMembers('supplyVolts', members));
  return words.join(' · ');
}

/** The value where all openings agree, otherwise each value with its marks: "12 V DC: 101; 24 V DC: 102, 103". */
export function acrossMembers(key: FactKey, members: readonly Member[]): string {
  const marks = new Map<string, string[]>();
  for (const { mark, decision } of members) {
    const value = valueIn(decision.slots, key);
    const words =
      value === undefined ? `${fieldInfo(key).label.toLowerCase()} not surveyed` : valueInWords(key, value);
    marks.set(words, [...(marks.get(words) ?? []), mark]);
  }
  const [first] = marks.keys();
  if (marks.size <= 1) return first ?? '';
  return [...marks].map(([words, list]) => `${words}: ${list.join(', ')}`).join('; ');
}
