import { itemOf } from '../devices/items.ts';
import type { Arranged } from './arranged.ts';
import { valueIn, slotOf } from '../logic/slots.ts';
import { isSwinging } from './inPlace.ts';
import { type Part, partsOf } from './parts.ts';
import type { FactKey } from '../model/fields.ts';

const ratedSlot = slotOf('fireRated');
const pairSlot = slotOf('isPair');

const remembered = new WeakMap<Arranged, string>();

/**
 * Everything in which two openings can differ on an order, label and hand among it. Sets were told apart by it before
 * they were things of their own, and files of that time name them so: what it says of an opening may not change.
 * Undefined while nothing is chosen.
 */
export function wholeSignature(decision: Arranged): string | undefined {
  const before = remembered.get(decision);
  if (before !== undefined) return before;
  const signature = signatureWith(decision, partsOf(decision));
  if (signature !== undefined) remembered.set(decision, signature);
  return signature;
}

/** The same where the parts are at hand. */
export function signatureWith(decision: Arranged, parts: readonly Part[]): string | undefined {
  const { chosen, slots } = decision;
  if (!chosen) return undefined;
  return [
    chosen.candidate.id,
    `label ${valueIn(slots, 'fireRatingMin') ?? '?'}`,
    `rated ${slots[ratedSlot] ?? '?'}`,
    `pair ${slots[pairSlot] ?? '?'}`,
    isHanded(parts, decision) ? `hand ${valueIn(slots, 'handing') ?? '?'}` : '',
    ...parts.map((part) => partInSignature(part, decision)).toSorted(),
  ].join('|');
}

function partInSignature(part: Part, decision: Arranged): string {
  const article = articleThen(part, decision);
  return [
    part.quantity,
    part.item,
    ...(part.kept ? ['kept'] : []),
    ...(article === '' ? [] : [article]),
  ].join(' ');
}

/** Kind and function of a lockset, kind of bar; empty for what is kept, or was the same whatever the opening. */
function articleThen({ item, kept }: Part, { slots }: Arranged): string {
  if (kept) return '';
  const value = (key: FactKey) => String(valueIn(slots, key) ?? '?');
  switch (item) {
    case 'mechanicalLock':
      return `${value('latch')} ${value('lockFunction')}`;
    case 'storeroomLockset':
    case 'panicHardware':
    case 'fireExitHardware':
      return value('latch');
    default:
      return '';
  }
}

/** A leaf that does not swing has no hand, whatever lock it carries. */
export function isHanded(parts: readonly Part[], decision: Arranged): boolean {
  return isSwinging(decision) && parts.some((part) => itemOf(part.item).handed === true && !part.kept);
}
