import { itemOf, type ItemId } from '../devices/items.ts';
import type { Arranged } from './arranged.ts';
import { valueIn } from '../logic/slots.ts';
import type { FactKey } from '../model/fields.ts';

/**
 * Lengths in which push bars are stocked, by the widest leaf each covers, inches. Common practice, no source: a bar is
 * cut to its leaf and cannot be made longer.
 */
const barLengths = [36, 48] as const;

/** "36", "48", "long", "?": the stocked bar that covers the leaf. */
export function barLength({ slots }: Pick<Arranged, 'slots'>): string {
  const width = valueIn(slots, 'leafWidthIn');
  if (typeof width !== 'number') return '?';
  const stocked = barLengths.find((length) => width <= length);
  return stocked === undefined ? 'long' : String(stocked);
}

/**
 * What of an item makes it another part number, so that openings that differ in it need sets of their own: the voltage
 * of what is electrified, kind and function of a lockset, kind and length of a bar. Empty where the item says all.
 */
export function articleOf(item: ItemId, decision: Pick<Arranged, 'slots'>): string {
  const { slots } = decision;
  const value = (key: FactKey) => String(valueIn(slots, key) ?? '?');
  const { article = [], cutToLeaf, electrified } = itemOf(item);
  const words = article.map(value);
  if (cutToLeaf) words.push(`bar ${barLength(decision)}`);
  if (electrified) words.push(`${value('supplyVolts')} V`);
  return words.join(' ');
}
