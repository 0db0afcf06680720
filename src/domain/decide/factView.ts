import { peopleIn } from '../egress/spaceLoad.ts';
import { type Slots, slotCount, slotOf } from '../logic/compile.ts';
import { fillDerived } from '../logic/derived.ts';
import type { Fact, Facts } from '../model/fact.ts';
import { type FactKey, type FactValues, factKeys, isFactKey } from '../model/fields.ts';
import type { Opening, Project, Space } from '../model/project.ts';
import { silentDefaults } from './defaults.ts';

/** What is known of one opening at this moment, in the form the rules read. */
export interface FactView {
  readonly slots: Slots;
  /** Facts that are only assumed, with where the assumption came from. */
  readonly assumed: ReadonlyMap<FactKey, string>;
}

const slotByFact = new Map<string, number>(factKeys.map((key) => [key, slotOf(key)]));
const defaults = silentDefaults.map((one) => ({ ...one, slot: slotOf(one.fact) }));
const onlyDefaults: ReadonlyMap<FactKey, string> = new Map(defaults.map((one) => [one.fact, one.from]));

/** What every opening of a building starts from; made once for as long as the building's facts stay the same. */
const baseByBuilding = new WeakMap<Facts, Slots>();

function baseOf(building: Facts): Slots {
  let base = baseByBuilding.get(building);
  if (!base) {
    base = new Array<Slots[number]>(slotCount).fill(undefined);
    for (const one of defaults) base[one.slot] = one.value;
    putInto(base, building);
    baseByBuilding.set(building, base);
  }
  return base;
}

function putInto(slots: Slots, facts: Facts): void {
  for (const key in facts) {
    const slot = slotByFact.get(key);
    const fact = facts[key as FactKey] as Fact<string | number | boolean> | undefined;
    if (slot === undefined || fact === undefined) continue;
    slots[slot] = fact.is === 'unknown' ? undefined : fact.value;
  }
}

/**
 * Building facts first, then the opening's own, which win; at last what the space behind the door says of its
 * occupant load, as an assumption that names the space.
 */
export function viewFacts(project: Project, opening: Opening): FactView {
  const slots = baseOf(project.building).slice();
  putInto(slots, opening.facts);
  const told = loadOfSpaceBehind(project, opening, slots);
  if (told) slots[loadSlot] = told.people;
  fillDerived(slots, project.basis);
  let assumed: ReadonlyMap<FactKey, string> | undefined;
  return {
    slots,
    // Asked for where a person reads; thousands are decided without it.
    get assumed() {
      assumed ??= assumptions(project, opening, told?.space);
      return assumed;
    },
  };
}

const loadSlot = slotOf('occupantLoad');

/** As somebody gave it for the space, else as its use and area make it. */
function loadOfSpaceBehind(
  project: Project,
  opening: Opening,
  slots: Slots,
): { readonly space: Space; readonly people: number } | undefined {
  if (slots[loadSlot] !== undefined || opening.facts.occupantLoad !== undefined) return undefined;
  const space = opening.toSpaceId === null ? undefined : project.spaces[opening.toSpaceId];
  const people = space ? peopleIn(space, project.basis) : null;
  return space && people !== null ? { space, people } : undefined;
}

function assumptions(
  project: Project,
  opening: Opening,
  space: Space | undefined,
): ReadonlyMap<FactKey, string> {
  const assumed = new Map(onlyDefaults);
  for (const facts of [project.building, opening.facts]) {
    for (const [key, fact] of Object.entries(facts) as [FactKey, Fact<unknown> | undefined][]) {
      if (fact?.is === 'assumed') assumed.set(key, fact.from);
      else if (fact) assumed.delete(key);
    }
  }
  if (space) {
    const how = space.occupantLoad === null ? ', worked out from its use and area' : '';
    assumed.set('occupantLoad', `load of ${space.name}${how}`);
  }
  return assumed;
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
  return values;
}
