import { items, type Trade } from '../devices/items.ts';
import { fitNotes, transferHours } from '../fit/notes.ts';
import type { Arranged } from './arranged.ts';
import { devicePart, partsOf } from './parts.ts';
import { workNotes } from './workNotes.ts';

/**
 * Hours at the opening by trade: to set each device, what the fit table changes for it at this door and frame, and the
 * transfer. Common practice, no source. Nothing where the device is there already and stays.
 */
export function laborHours(decision: Arranged): ReadonlyMap<Trade, number> {
  const hours = new Map<Trade, number>();
  const { chosen } = decision;
  const parts = partsOf(decision);
  const device = devicePart(decision, parts);
  if (!chosen || !device || device.kept) return hours;
  const add = (trade: Trade, by: number) => {
    if (by > 0) hours.set(trade, (hours.get(trade) ?? 0) + by);
  };
  add(items[device.item].trade, chosen.candidate.device.laborH * device.quantity);
  for (const note of workNotes(decision)) {
    const made = fitNotes[note];
    if (made) add(made.trade, made.hours);
  }
  const transfers = parts.find(({ item, kept }) => item === 'powerTransfer' && !kept)?.quantity ?? 0;
  add(items.powerTransfer.trade, transferHours * transfers);
  return hours;
}
