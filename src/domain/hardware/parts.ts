import { type Item, itemOf, type ItemId, items, linksOf, setSteps } from '../devices/items.ts';
import type { Device } from '../devices/devices.ts';
import { fitNotes } from '../fit/notes.ts';
import { leverLatches } from '../model/latches.ts';
import { slotOf, valueIn } from '../logic/slots.ts';
import type { Arranged } from './arranged.ts';
import { workNotes } from './workNotes.ts';
import {
  barsBrought,
  carriesBar,
  devicesOn,
  inPlace,
  isSwinging,
  leavesOf,
  leavesWithCloser,
  workedLeaves,
} from './inPlace.ts';

/** One line of a hardware set: what, how many, and why it is there. */
export interface Part {
  readonly item: ItemId;
  readonly quantity: number;
  /** Rule that asks for it; undefined for what the choice itself consists of. */
  readonly ruleId: string | undefined;
  /** Seen in place by the survey and good for the choice: it stays and is not bought. */
  readonly kept: boolean;
}

const ratedSlot = slotOf('fireRated');

/** Hinges a leaf needs: one for each 30 in of height or part of it, three at least. Common practice, no source. */
function hingesPerLeaf(leafHeightIn: number): number {
  return Math.max(3, Math.ceil(leafHeightIn / 30));
}

/**
 * The parts one opening needs for the choice: the device, what goes with it, and what the rules ask for, in the
 * order a hardware set is listed. Empty while nothing is chosen.
 */
export function partsOf(decision: Arranged): readonly Part[] {
  return listOf(decision)?.inOrder(inPlace(decision)) ?? [];
}

/** The line of the device itself, whatever stands in for its plain item. */
export function devicePart(decision: Arranged, parts: readonly Part[]): Part | undefined {
  const { chosen } = decision;
  const plain = chosen && deviceItemOf(decision, chosen.candidate);
  return parts.find(({ item }) => item === plain || linksOf(item).standsInFor === plain);
}

/** Where a bar latches the door it is the mechanical lock, and a battery drives the trim outside of it. */
function deviceItemOf(decision: Arranged, { device }: PutChosen['candidate']): ItemId {
  if (device.family === 'mechanical' && carriesBar(decision)) return 'panicHardware';
  if (device.family === 'battery' && carriesBar(decision)) return 'batteryTrim';
  return device.item;
}

/** The same without order and without what is there already: what stands on the opening once it is done. */
export function itemsOf(decision: Arranged): ReadonlySet<ItemId> {
  return listOf(decision)?.items() ?? nothing;
}
const nothing: ReadonlySet<ItemId> = new Set();

function listOf(decision: Arranged): PartList | undefined {
  const { chosen } = decision;
  if (!chosen) return undefined;
  const list = new PartList();
  putDevice(decision, chosen, list);
  putElectrics(decision, chosen, list);
  for (const step of decision.requires) {
    if (step.clause.effect !== 'require') continue;
    for (const item of step.clause.items) list.put(item, 1, step.rule.id);
  }
  // Also where nobody leaves by it and no rule asks: the arrangement itself is sensor and button.
  if (chosen.candidate.release === 'sensor') {
    list.put('exitSensor');
    list.put('pushToExit');
  }
  // A switch in the leaf needs its own wire over the hinge line; only a lock that has one there brings it along.
  if (!chosen.candidate.device.transfer) list.exchange('requestToExit', 'exitShuntSensor');
  putClosing(decision, list);
  putPerLeaf(decision, chosen, list);
  if (list.has('automaticFlushBolts') && valueIn(decision.slots, 'inactiveBolts') === 'manualFlush') {
    if (valueIn(decision.slots, 'workStatus') !== 'new') list.put('removeFlushBolts');
  }
  list.mergeStandIns();
  return list;
}

const standIns = (Object.keys(items) as readonly ItemId[]).flatMap((item) => {
  const { standsInFor } = linksOf(item);
  return standsInFor ? [[item, standsInFor] as const] : [];
});

type PutChosen = NonNullable<Arranged['chosen']>;
type Quantities = Omit<Part, 'kept'>;

class PartList {
  readonly #parts = new Map<ItemId, Quantities>();

  put(item: ItemId, quantity = 1, ruleId?: string): void {
    const before = this.#parts.get(item);
    if (quantity <= (before?.quantity ?? 0)) return;
    this.#parts.set(item, { item, quantity, ruleId: before?.ruleId ?? ruleId });
  }

  /** As many as there are leaves or devices, where it is asked for at all. */
  atLeast(item: ItemId, quantity: number): void {
    if (this.#parts.has(item)) this.put(item, quantity);
  }

  /** What goes with each leaf, device or bar stands there as often as these do. */
  multiply(counts: Readonly<Record<NonNullable<Item['per']>, number>>): void {
    for (const id of this.#parts.keys()) {
      const { per } = itemOf(id);
      if (per !== undefined) this.atLeast(id, counts[per]);
    }
  }

  has(item: ItemId): boolean {
    return this.#parts.has(item);
  }

  /** The same duty done by another piece. */
  exchange(item: ItemId, by: ItemId): void {
    const asked = this.#parts.get(item);
    if (!asked) return;
    this.#parts.delete(item);
    this.put(by, asked.quantity, asked.ruleId);
  }

  remove(item: ItemId): void {
    this.#parts.delete(item);
  }

  /** An item that says more takes the place of the plainer one. */
  mergeStandIns(): void {
    for (const [item, plainer] of standIns) {
      const better = this.#parts.get(item);
      const before = this.#parts.get(plainer);
      if (!better || !before) continue;
      this.#parts.set(item, { ...better, quantity: Math.max(better.quantity, before.quantity) });
      this.#parts.delete(plainer);
    }
  }

  items(): ReadonlySet<ItemId> {
    return new Set(this.#parts.keys());
  }

  inOrder(kept: ReadonlyMap<ItemId, number>): readonly Part[] {
    return [...this.#parts.values()]
      .map((part) => ({ ...part, kept: (kept.get(part.item) ?? 0) >= part.quantity }))
      .toSorted((a, b) => setSteps.indexOf(items[a.item].step) - setSteps.indexOf(items[b.item].step));
  }
}

/** The device, what it works with, and what a new opening must be bought with. */
function putDevice(decision: Arranged, { candidate }: PutChosen, list: PartList): void {
  const { slots } = decision;
  const { device } = candidate;
  const leaves = leavesOf(decision);
  const worked = workedLeaves(decision);
  const isNew = valueIn(slots, 'workStatus') === 'new';
  const bar = carriesBar(decision);
  if (isNew) putHanging(decision, leaves, list);
  const item = deviceItemOf(decision, candidate);
  // Where a bar latches the door a mechanical lockset would be a second lock: the bar is the lock.
  if (item === 'panicHardware') list.put(item, worked);
  // On a bar the battery drives the trim outside, and the bar stays.
  else if (item === 'batteryTrim') list.put(item);
  else list.put(item, device.family === 'none' ? leaves : devicesOn(decision));
  // A strike is no lock, and trim, retraction and strike alike work on a bar; at an existing door they may be there.
  const frameStrike = device.family === 'strike' && !device.exitDevice;
  // A bare leaf that stands is no leaf with a lockset: nothing may be counted as opening it from inside.
  if (frameStrike && !bar && (isNew || !bareLatches.includes(valueIn(slots, 'latch'))))
    list.put('storeroomLockset');
  if (bar && device.family !== 'mechanical') list.put('panicHardware', worked - barsBrought(decision));
  if (isNew && (device.family === 'magnet' || device.family === 'bolt') && !bar) {
    if (valueIn(slots, 'latch') === 'pushPull') list.put('pushPull', leaves);
    else if (latchesBesideLock.includes(valueIn(slots, 'latch'))) list.put('mechanicalLock');
  }
  if (needsCylinder(decision, device)) list.put('keyCylinder');
  for (const note of workNotes(decision)) for (const item of fitNotes[note]?.items ?? []) list.put(item);
  putLeafWork(decision, candidate, list);
  putRemovals(decision, device, list);
}

/** Notes of the fit table that want a preparation which the leaf does not have. */
const preparationNotes: readonly number[] = [3, 4];

/**
 * A leaf in place that is not made for the lock is prepared, and a steel one that needs a pocket is exchanged: nobody
 * mortises hollow metal at the door. Common practice, no source. A labeled leaf is cut only where R-39 lets it be.
 */
function putLeafWork(decision: Arranged, { deviceId }: PutChosen['candidate'], list: PartList): void {
  const { slots } = decision;
  const work = valueIn(slots, 'workStatus');
  if ((work !== 'existing' && work !== 'altered') || valueIn(slots, 'leafPrepared') === true) return;
  if (!workNotes(decision).some((note) => preparationNotes.includes(note))) return;
  const steelPocket = deviceId === 'mortiseLock' && valueIn(slots, 'leafMaterial') === 'hollowMetal';
  const cutAsApproved = valueIn(slots, 'fieldModificationApproved') === true;
  list.put(steelPocket && !cutAsApproved ? 'newLeaf' : 'leafPreparation', devicesOn(decision));
}

/** What hangs at an opening in place and cannot stay beside the choice is work of its own, so it has its line. */
function putRemovals(decision: Arranged, device: Device, list: PartList): void {
  const { slots } = decision;
  const work = valueIn(slots, 'workStatus');
  if (work !== 'existing' && work !== 'altered') return;
  const found = valueIn(slots, 'existingArrangement');
  const family = electricFound[String(found)];
  if (family !== undefined && family !== device.family) list.put('removeElectricLock');
  if (addedLocks.includes(found)) list.put('removeAddedLock');
  const latch = valueIn(slots, 'latch');
  const replaced = bringsItsLatch.includes(device.family) && latchesThatGo.includes(latch);
  const bar = carriesBar(decision);
  const besideHeld = ['magnet', 'bolt', 'delayed'].includes(device.family) && boltsThatHold.includes(latch);
  if ((replaced && !bar) || besideHeld) list.put('removeLock');
}
const electricFound: Readonly<Record<string, Device['family']>> = {
  magnetNoSensor: 'magnet',
  magnetAlarmOnly: 'magnet',
  magnetFullSet: 'magnet',
  electricBolt: 'bolt',
  failSafeStrike: 'strike',
};
const addedLocks: readonly unknown[] = ['padlock', 'slideBolt', 'barricade'];
const bringsItsLatch: readonly unknown[] = ['lock', 'battery', 'delayed', 'exitDevice'];
const latchesThatGo: readonly unknown[] = [...leverLatches, 'deadboltOnly', 'hookbolt', 'patch', 'roller'];
/** A bolt thrown by a key or a turn holds the leaf after the new lock has let go. */
const boltsThatHold: readonly unknown[] = ['deadboltOnly', 'hookbolt', 'patch'];
const bareLatches: readonly unknown[] = ['pushPull', 'roller'];
const latchesBesideLock: readonly unknown[] = ['bored', 'mortise', 'mortiseDeadbolt', 'boredPlusDeadbolt'];

/** A bar without outside trim, or a lever that nothing locks, has nothing to put a key into. */
function needsCylinder({ slots }: Arranged, { family, takesKey }: Device): boolean {
  const outside = valueIn(slots, 'lockFunction');
  return takesKey && (family !== 'mechanical' || (outside !== 'none' && outside !== 'passage'));
}

/** Reader, switches, cable and what feeds them. */
function putElectrics(decision: Arranged, { candidate, cell }: PutChosen, list: PartList): void {
  const { slots } = decision;
  const { device, release } = candidate;
  const reader = valueIn(slots, 'readerSides');
  if (
    reader !== undefined &&
    reader !== 'none' &&
    device.family !== 'mechanical' &&
    device.family !== 'none'
  ) {
    // A battery lock carries its own reader and reports its own position.
    if (device.wired) list.put('reader');
    if (reader === 'both' || reader === 'recordOut') list.put('readerInside');
  }
  if (device.family === 'battery') {
    list.put('battery');
    if (reader !== undefined && reader !== 'none') list.put('wirelessHub');
  }
  if (!device.wired) return;
  const devicesInLeaf = devicesOn(decision);
  if (cell?.transfer) list.put('powerTransfer', devicesInLeaf);
  list.put('doorPosition');
  if (leavesOf(decision) === 2) list.put('doorPositionInactive');
  list.put('accessController');
  list.put('lockCable');
  // The operator feeds the lock of its own package.
  if (device.family !== 'operator') list.put('lockSupply');
  if (device.family !== 'operator' && (release === 'free' || release === 'stairReentry'))
    list.put('requestToExit');
}

/**
 * A leaf that must close has its closer in the set: what the survey saw at an existing opening is kept, what a new
 * opening is to have is bought, and at a rated leaf also where nobody knows what closes it.
 */
function putClosing(decision: Arranged, list: PartList): void {
  const { slots } = decision;
  if (!isSwinging(decision)) return;
  const rated = slots[ratedSlot] === true;
  const closing = valueIn(slots, 'closing');
  const closes = closing === 'selfClosing' || closing === 'automaticClosing';
  const closers = leavesWithCloser(decision);
  if (closes || rated) list.put('closer', closers, rated ? closerRule : undefined);
  list.atLeast('closer', closers);
  if (closing === 'automaticClosing') list.put('smokeHoldOpen', 1);
}
const closerRule = 'R-36';

/** What goes with a leaf or with each device is counted with them, also where a rule asks for it once. */
function putPerLeaf(decision: Arranged, { cell }: PutChosen, list: PartList): void {
  const leaves = leavesOf(decision);
  const devices = devicesOn(decision);
  const worked = workedLeaves(decision);
  // Counted already, one magnet for each leaf.
  if (devices > 1) list.remove('doubleMagnet');
  list.multiply({ device: devices, bar: worked - barsBrought(decision), leaf: leaves });
  if (list.has('doorSwitchHardware') && isSwinging(decision)) {
    // The switch sits in the leaf and cuts the lock's power, so its wire crosses the hinge line.
    list.put('doorSwitchHardware', worked);
    list.put('powerTransfer', worked);
    const leaf = valueIn(decision.slots, 'leafMaterial');
    if (valueIn(decision.slots, 'leafRaceway') === false && leaf !== 'glassFrameless') {
      list.put('leafRaceway', worked);
    }
  }
  // Whatever brings a wire to the leaf, the leaf needs a way for it.
  const bare = valueIn(decision.slots, 'leafRaceway') === false;
  if (bare && list.has('powerTransfer') && valueIn(decision.slots, 'leafMaterial') !== 'glassFrameless') {
    list.put('leafRaceway');
  }
  list.atLeast('leafRaceway', cell?.transfer ? devices : 1);
}

function putHanging(decision: Arranged, leaves: number, list: PartList): void {
  const { slots } = decision;
  const hanging = valueIn(slots, 'hinges');
  const height = valueIn(slots, 'leafHeightIn');
  if (hanging === 'continuous') list.put('continuousHinge', leaves);
  else if (hanging === 'pivot') list.put('pivots', leaves);
  else if ((hanging === 'butt' || hanging === 'swingClear') && typeof height === 'number') {
    list.put('hinges', leaves * hingesPerLeaf(height));
  }
  if (leaves === 2) {
    const bolts = valueIn(slots, 'inactiveBolts');
    if (bolts === 'manualFlush') list.put('manualFlushBolts');
    if (bolts === 'automaticFlush' || bolts === 'constantLatching') list.put('automaticFlushBolts');
    if (valueIn(slots, 'coordinator') === true) list.put('coordinator');
    if (valueIn(slots, 'mullion') === true) list.put('mullion');
  }
  const operator = valueIn(slots, 'operator');
  if (operator === 'lowEnergy' || operator === 'fullPower') list.put('automaticOperator');
  if (valueIn(slots, 'smokeSeals') === true) list.put('gasketing');
}
