import type { CodeBasis } from '../codes/basis.ts';
import { type Slots, slotCount, slotOf } from '../logic/slots.ts';
import { fillDerived } from '../logic/derived.ts';
import { type Facts, factAt, factEntries } from '../model/fact.ts';
import { type FactKey, type FactValues, factKeys, type AnyValue } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { type Implied, impliedFor } from '../plan/implied.ts';
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

export function putInto(slots: Slots, facts: Facts): void {
  for (const key in facts) {
    const slot = slotByFact.get(key);
    const fact = factAt(facts, key as FactKey);
    if (slot === undefined || fact === undefined) continue;
    slots[slot] = fact.is === 'unknown' ? undefined : fact.value;
  }
}

/**
 * Building facts first, then the opening's own, which win; at last what the plan implies, which wins over both: what
 * spaces and other openings show is not for one door to say. Laid out when somebody asks: thousands are decided from
 * slots that the next opening uses again. It holds what it reads and not the project, which would be kept with all its
 * openings for as long as one decision is.
 */
class OpeningView implements FactView {
  readonly #building: Facts;
  readonly #own: Facts;
  readonly #implied: Implied;
  readonly #basis: CodeBasis;
  #slots: Slots | undefined;
  #assumed: ReadonlyMap<FactKey, string> | undefined;

  constructor(project: Project, opening: Opening) {
    this.#building = project.building;
    this.#own = opening.facts;
    this.#implied = impliedFor(project, opening);
    this.#basis = project.basis;
  }

  get slots(): Slots {
    this.#slots ??= this.readInto(new Array<Slots[number]>(slotCount).fill(undefined));
    return this.#slots;
  }
  get assumed(): ReadonlyMap<FactKey, string> {
    this.#assumed ??= assumptions([this.#building, this.#own], this.#implied);
    return this.#assumed;
  }
  /** The same as `slots`, written over whatever stood there. */
  readInto(slots: Slots): Slots {
    const base = baseOf(this.#building);
    for (let slot = 0; slot < slotCount; slot++) slots[slot] = base[slot];
    putInto(slots, this.#own);
    for (const { key, value } of this.#implied.facts) slots[slotByFact.get(key) as number] = value;
    for (const key of this.#implied.differs) slots[slotOf(key)] = true;
    fillDerived(slots, this.#basis);
    return slots;
  }
}

export function viewFacts(project: Project, opening: Opening): OpeningView {
  return new OpeningView(project, opening);
}

const fromPlan = 'from the plan: ';
/** Whether a fact that nobody entered at the opening stands on the plan of the building. */
export function isFromPlan(from: string | undefined): boolean {
  return from?.startsWith(fromPlan) === true;
}
/** What in the plan it stands on. */
export function planBehind(from: string | undefined): string | undefined {
  return from !== undefined && isFromPlan(from) ? from.slice(fromPlan.length) : undefined;
}

function assumptions(from: readonly Facts[], implied: Implied): ReadonlyMap<FactKey, string> {
  const assumed = new Map(onlyDefaults);
  for (const facts of from) {
    for (const [key, fact] of factEntries(facts)) {
      if (fact.is === 'assumed') assumed.set(key, fact.from);
      else assumed.delete(key);
    }
  }
  for (const { key, from: where } of implied.facts) assumed.set(key, `${fromPlan}${where}`);
  return assumed;
}

/** The surveyed values behind the slots, without the derived ones; a key that is absent is unknown. */
export function knownValues(slots: Slots): FactValues {
  const values: Record<string, AnyValue> = {};
  for (const [key, slot] of slotByFact) {
    const value = slots[slot];
    if (value !== undefined) values[key] = value;
  }
  return values;
}
