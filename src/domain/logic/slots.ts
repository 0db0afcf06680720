import { type AnyValue, type FactKey, factKeys, type FactValue } from '../model/fields.ts';
import type { Readable } from './condition.ts';
import { type DerivedKey, derivedKeys } from './derivedKeys.ts';
import { planKeys } from './planKeys.ts';

/** Values by slot; `undefined` is unknown. An array, because property look-ups by name cost most of the time. */
export type Slots = (AnyValue | undefined)[];

const readables: readonly Readable[] = [...factKeys, ...derivedKeys, ...planKeys];
const slotByKey = new Map<Readable, number>(readables.map((key, index) => [key, index]));
export const slotCount = slotByKey.size;

export function slotOf(key: Readable): number {
  const slot = slotByKey.get(key);
  if (slot === undefined) throw new Error(`No slot for fact ${key}.`);
  return slot;
}

/** The fact that a slot holds. */
export function readableAt(slot: number): Readable {
  const key = readables[slot];
  if (key === undefined) throw new Error(`No fact in slot ${slot}.`);
  return key;
}

/** The value of a surveyed or derived fact, `undefined` while unknown: the one way to read it with its type. */
export function valueIn<K extends FactKey>(slots: Slots, key: K): FactValue<K> | undefined;
export function valueIn(slots: Slots, key: DerivedKey): boolean | undefined;
export function valueIn(slots: Slots, key: Readable): Slots[number] {
  return slots[slotOf(key)];
}
