import { itemOf } from '../devices/items.ts';
import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../decide/factView.ts';
import { isSwinging } from '../decide/inPlace.ts';
import { type Part, partsOf } from '../decide/parts.ts';
import { slotOf } from '../logic/compile.ts';
import { articleOf } from './setLines.ts';

const ratedSlot = slotOf('fireRated');
const pairSlot = slotOf('isPair');

/**
 * Openings with the same signature are alike in every item. Rated and unrated openings, pairs and singles, and
 * two fail modes never meet in one: each of these stands in the signature by itself, whatever the parts are.
 * Undefined while nothing is chosen.
 */
export function setSignature(decision: Decision): string | undefined {
  const { chosen, slots } = decision;
  if (!chosen) return undefined;
  const parts = partsOf(decision);
  return [
    chosen.candidate.id,
    `label ${valueIn(slots, 'fireRatingMin') ?? '?'}`,
    `rated ${slots[ratedSlot] ?? '?'}`,
    `pair ${slots[pairSlot] ?? '?'}`,
    isHanded(parts, decision) ? `hand ${valueIn(slots, 'handing') ?? '?'}` : '',
    ...parts.map((part) => partInSignature(part, decision)).toSorted(),
  ].join('|');
}

function partInSignature(part: Part, decision: Decision): string {
  const article = articleOf(part, decision);
  return [
    part.quantity,
    part.item,
    ...(part.kept ? ['kept'] : []),
    ...(article === '' ? [] : [article]),
  ].join(' ');
}

/** A leaf that does not swing has no hand, whatever lock it carries. */
export function isHanded(parts: readonly Part[], decision: Decision): boolean {
  return isSwinging(decision) && parts.some((part) => itemOf(part.item).handed === true && !part.kept);
}
