import { type Slots, slotCount, slotOf } from '../logic/compile.ts';
import { fillDerived } from '../logic/derived.ts';
import type { Fact, Facts } from '../model/fact.ts';
import { type FactKey, type FactValues, factKeys, isFactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { silentDefaults } from './defaults.ts';

/** What is known of one opening at this moment, in the form the rules read. */
export interface FactView {
  readonly slots: Slots;
  /** Facts that are only assumed, with where the assumption came from. */
  readonly assumed: ReadonlyMap<FactKey, string>;
}

const slotByFact = new Map<string, number>(factKeys.map((key) => [key, slotOf(key)]));
const defaults = silentDefaults.map((one) => ({ ...one, slot: slotOf(one.fact) }));
/** Shared by every opening whose owner voiced no wish, which is most of them. */
const onlyDefaults: ReadonlyMap<FactKey, string> = new Map(defaults.map((one) => [one.fact, one.from]));

/**
 * Building facts first, then the opening's own, which win; at last what the space behind the door says of its
 * occupant load, as an assumption that names the space.
 */
export function viewFacts(project: Project, opening: Opening): FactView {
  const slots: Slots = new Array(slotCount).fill(undefined);
  let assumed: Map<FactKey, string> | undefined;
  for (const one of defaults) slots[one.slot] = one.value;
  const assume = () => {
    assumed ??= new Map(onlyDefaults);
    return assumed;
  };
  const take = (facts: Facts) => {
    for (const key in facts) {
      const slot = slotByFact.get(key);
      const fact = facts[key as FactKey] as Fact<string | number | boolean> | undefined;
      if (slot === undefined || fact === undefined) continue;
      if (fact.is === 'unknown') {
        slots[slot] = undefined;
        if (onlyDefaults.has(key as FactKey) || assumed) assume().delete(key as FactKey);
        continue;
      }
      slots[slot] = fact.value;
      if (fact.is === 'assumed') assume().set(key as FactKey, fact.from);
      else if (onlyDefaults.has(key as FactKey) || assumed) assume().delete(key as FactKey);
    }
  };
  take(project.building);
  take(opening.facts);
  const loadSlot = slotByFact.get('occupantLoad') as number;
  if (
    slots[loadSlot] === undefined &&
    opening.facts.occupantLoad === undefined &&
    opening.toSpaceId !== null
  ) {
    const space = project.spaces[opening.toSpaceId];
    if (space && space.occupantLoad !== null) {
      slots[loadSlot] = space.occupantLoad;
      assume().set('occupantLoad', `load of ${space.name}`);
    }
  }
  fillDerived(slots, project.basis);
  return { slots, assumed: assumed ?? onlyDefaults };
}

/** The value behind a key, `undefined` when unknown. */
export function valueIn(slots: Slots, key: string): string | number | boolean | undefined {
  return isFactKey(key) ? slots[slotByFact.get(key) as number] : undefined;
}

/** The surveyed values behind the slots, without the derived ones; a key that is absent is unknown. */
export function knownValues(slots: Slots): FactValues {
  const values: Record<string, string | number | boolean> = {};
  for (const [key, slot] of slotByFact) {
    const value = slots[slot];
    if (value !== undefined) values[key] = value;
  }
  return values as FactValues;
}
