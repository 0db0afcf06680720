import type { ItemId } from '../devices/items.ts';
import { slotOf, valueIn } from '../logic/slots.ts';
import { barLatches, leverLatches } from '../model/latches.ts';
import type { Arranged } from './arranged.ts';

/** What hangs on the leaf today and latches may stay. */
const lockLatches: readonly unknown[] = leverLatches;
const barred: readonly unknown[] = barLatches;
/** Outside levers that a key works. */
const keyedFunctions: readonly unknown[] = ['storeroom', 'classroom', 'office'];

const swingingSlot = slotOf('isSwinging');
const pairSlot = slotOf('isPair');

export function leavesOf({ slots }: Pick<Arranged, 'slots'>): 1 | 2 {
  return slots[pairSlot] === true ? 2 : 1;
}

export function isSwinging({ slots }: Pick<Arranged, 'slots'>): boolean {
  return slots[swingingSlot] === true;
}

const heldBothLeaves: readonly unknown[] = ['delayed', 'controlled'];
const latchesByItself: readonly unknown[] = ['rods', 'rim'];

/**
 * How many of the chosen device there are. A delay or control on one leaf holds nobody while the other leaf has a bar
 * of its own: each leaf that opens by itself carries one.
 */
export function devicesOn({ chosen, slots }: Pick<Arranged, 'chosen' | 'slots'>): number {
  if (!chosen) return 0;
  // A leaf held by hand-worked bolts carries no bar.
  if (chosen.candidate.device.exitDevice && workedLeaves({ slots }) === 1) return 1;
  const held = heldBothLeaves.includes(chosen.candidate.release);
  const each = chosen.cell?.both || (held && latchesByItself.includes(valueIn(slots, 'inactiveBolts')));
  return each ? leavesOf({ slots }) : 1;
}

/** Leaves that somebody opens by lever or bar: one held by hand-worked bolts carries neither. */
export function workedLeaves(decision: Pick<Arranged, 'slots'>): number {
  return valueIn(decision.slots, 'inactiveBolts') === 'manualFlush' ? 1 : leavesOf(decision);
}

/** A bar latches the leaf, or is asked of it. */
export function carriesBar({ slots }: Pick<Arranged, 'slots'>): boolean {
  return valueIn(slots, 'panicPresent') === true || barred.includes(valueIn(slots, 'latch'));
}

/** An operator moves the leaf and closes it, so that leaf carries no closer. */
export function leavesWithCloser(decision: Pick<Arranged, 'slots'>): number {
  const operator = valueIn(decision.slots, 'operator');
  const driven = operator === 'lowEnergy' || operator === 'fullPower' ? 1 : 0;
  return leavesOf(decision) - driven;
}

/**
 * What the survey saw at an existing opening and the choice can keep, with how many: it is listed as kept and not
 * bought. Nothing is kept at a new opening, or where nobody said whether the opening is new.
 */
export function inPlace(decision: Arranged): ReadonlyMap<ItemId, number> {
  const kept = new Map<ItemId, number>();
  const { slots, chosen } = decision;
  const work = valueIn(slots, 'workStatus');
  if (!chosen || (work !== 'existing' && work !== 'altered')) return kept;
  const keep = (item: ItemId, quantity: number) => quantity > 0 && kept.set(item, quantity);
  const leaves = leavesOf(decision);
  const worked = workedLeaves(decision);
  const { family } = chosen.candidate.device;

  const closing = valueIn(slots, 'closing');
  if (isSwinging(decision) && (closing === 'selfClosing' || closing === 'automaticClosing')) {
    keep('closer', leavesWithCloser(decision));
  }
  if (closing === 'automaticClosing' || valueIn(slots, 'holdOpen') === 'detectorReleased') {
    keep('smokeHoldOpen', 1);
  }
  const operator = valueIn(slots, 'operator');
  if (operator === 'lowEnergy' || operator === 'fullPower') keep('automaticOperator', 1);

  const latch = valueIn(slots, 'latch');
  const keyed = keyedFunctions.includes(valueIn(slots, 'lockFunction'));
  if (carriesBar(decision)) {
    // A bar that comes with the choice takes the place of the one on its leaf.
    const bars = worked - barsBrought(decision);
    keep('panicHardware', bars);
    if (valueIn(slots, 'exitHardwareFireListed') === true) keep('fireExitHardware', bars);
    if (keyed && bars === worked && (family === 'strike' || family === 'mechanical')) keep('keyCylinder', 1);
  } else if (lockLatches.includes(latch)) {
    if (family === 'mechanical' && staysAsItIs(slots)) {
      keep('mechanicalLock', 1);
      if (keyed) keep('keyCylinder', 1);
    }
    if (family === 'strike') {
      if (valueIn(slots, 'lockFunction') === 'storeroom') keep('storeroomLockset', 1);
      if (keyed) keep('keyCylinder', 1);
    }
  }
  if (family === 'mechanical' && valueIn(slots, 'egressRole') === 'sealedOff') {
    keep('mechanicalLock', 1);
    keep('keyCylinder', 1);
  }
  if (family === 'none' && latch === 'pushPull') keep('pushPull', leaves);
  if (valueIn(slots, 'glassRails') === 'both') keep('glassRails', leaves);

  const bolts = valueIn(slots, 'inactiveBolts');
  if (bolts === 'automaticFlush' || bolts === 'constantLatching') keep('automaticFlushBolts', 1);
  if (valueIn(slots, 'coordinator') === true) keep('coordinator', 1);
  if (valueIn(slots, 'smokeSeals') === true) keep('gasketing', 1);
  if (valueIn(slots, 'fireLabel') === 'seen') keep('doubleEgressListing', 1);

  const found = valueIn(slots, 'existingArrangement');
  if (found === 'magnetFullSet' && chosen.candidate.deviceId === 'magnet') {
    keep('magnetLock', devicesOn(decision));
    if (chosen.candidate.release === 'sensor') for (const item of magnetSet) keep(item, 1);
  }
  if (found === 'electricBolt' && family === 'bolt') keep('electricBolt', 1);
  return kept;
}
/** A lever that lets people out stays; so does what hangs where nothing is read and nothing unlawful was found. */
function staysAsItIs(slots: Arranged['slots']): boolean {
  const found = valueIn(slots, 'existingArrangement');
  return found === 'freeLever' || (found === 'none' && valueIn(slots, 'readerSides') === 'none');
}
/** "Magnet with sensor, button and alarm release", as the survey asks it. */
const magnetSet: readonly ItemId[] = ['exitSensor', 'pushToExit', 'fireAlarmRelease'];

/** How many bars the choice brings with it. */
export function barsBrought({ chosen, slots }: Pick<Arranged, 'chosen' | 'slots'>): number {
  return chosen?.candidate.device.bringsBar ? devicesOn({ chosen, slots }) : 0;
}
