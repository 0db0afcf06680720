import { type ItemId, items, type SetStep } from '../devices/items.ts';
import type { DeviceId } from '../devices/devices.ts';
import { fitNotes } from '../fit/notes.ts';
import { valueIn } from './factView.ts';
import type { Decision } from './decision.ts';

/** One line of a hardware set: what, how many, and why it is there. */
export interface Part {
  readonly item: ItemId;
  readonly quantity: number;
  /** Rule that asks for it; undefined for what the choice itself consists of. */
  readonly ruleId: string | undefined;
}

const deviceItem: Record<DeviceId, ItemId> = {
  strikeMortise: 'electricStrike',
  strikeCylindrical: 'electricStrike',
  strikeRim: 'electricStrike',
  magnet: 'magnetLock',
  shearMagnet: 'magnetLock',
  boltSolenoid: 'electricBolt',
  boltMotor: 'electricBolt',
  mortiseLock: 'mortiseLock',
  cylindricalLock: 'cylindricalLock',
  exitTrim: 'exitTrim',
  latchRetractionMotor: 'latchRetraction',
  latchRetractionSolenoid: 'latchRetraction',
  delayedExitDevice: 'delayedExitDevice',
  delayedMagnet: 'delayedMagnet',
  glassPatchLock: 'glassLock',
  glassRailExit: 'glassRailExit',
  narrowStileLatch: 'narrowStileLatch',
  gateLock: 'gateLock',
  batteryLock: 'batteryLock',
  mechanicalLock: 'mechanicalLock',
  detentionLock: 'mechanicalLock',
  noLock: 'pushPull',
};

/** An item that says more takes the place of the plainer one. */
const standsInFor: Partial<Record<ItemId, ItemId>> = {
  fireListedStrike: 'electricStrike',
  continuousDutyStrike: 'electricStrike',
  preloadStrike: 'electricStrike',
  signDelayed30: 'signDelayed15',
  signDelayedPull: 'signDelayed15',
  keyLockMainDoor: 'mechanicalLock',
  fireExitHardware: 'panicHardware',
};

const stepOrder: Record<SetStep, number> = {
  hang: 0,
  secure: 1,
  control: 2,
  protect: 3,
  electrical: 4,
  paper: 5,
};

const exitDevices: readonly unknown[] = ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit'];
/** These are the exit device themselves. */
const bringsBar: readonly DeviceId[] = ['delayedExitDevice', 'glassRailExit'];

/** Hinges a leaf needs: one for each 30 in of height or part of it, three at least. Common practice, no source. */
export function hingesPerLeaf(leafHeightIn: number): number {
  return Math.max(3, Math.ceil(leafHeightIn / 30));
}

/**
 * The parts one opening needs for the choice: the device, what goes with it, and what the rules ask for, in the
 * order a hardware set is listed. Empty while nothing is chosen.
 */
export function partsOf(decision: Decision): readonly Part[] {
  const { chosen, slots } = decision;
  if (!chosen) return [];
  const parts = new Map<ItemId, Part>();
  const put = (item: ItemId, quantity = 1, ruleId?: string) => {
    const before = parts.get(item);
    if (!before || before.quantity < quantity)
      parts.set(item, { item, quantity, ruleId: before?.ruleId ?? ruleId });
  };
  const { candidate, cell } = chosen;
  const { device } = candidate;
  const leaves = slotsSayPair(decision) ? 2 : 1;
  const perLeaf = cell?.both ? leaves : 1;

  const isNew = valueIn(slots, 'workStatus') === 'new';
  const barOnLeaf = valueIn(slots, 'panicPresent') === true || exitDevices.includes(valueIn(slots, 'latch'));
  if (isNew) putHanging(decision, leaves, put);
  // Where a bar latches the door a mechanical lockset would be a second lock: the bar is the lock.
  if (device.family === 'mechanical' && barOnLeaf) put('panicHardware', leaves);
  else put(deviceItem[candidate.deviceId], perLeaf);
  if (isNew) {
    // A strike is no lock, and trim, retraction and strike alike work on a bar that has to be bought as well.
    if (candidate.deviceId === 'strikeMortise' || candidate.deviceId === 'strikeCylindrical') {
      if (!barOnLeaf) put('storeroomLockset');
    }
    if (barOnLeaf && !bringsBar.includes(candidate.deviceId)) put('panicHardware', leaves);
  }
  if (!['magnet', 'bolt', 'none'].includes(device.family)) put('keyCylinder');
  if (cell?.transfer) put('powerTransfer', perLeaf);
  for (const note of cell?.notes ?? []) for (const item of fitNotes[note]?.items ?? []) put(item);

  const reader = valueIn(slots, 'readerSides');
  if (reader !== undefined && reader !== 'none' && device.family !== 'mechanical') {
    // A battery lock carries its own reader and reports its own position.
    if (device.wired) put('reader');
    if (reader === 'both' || reader === 'recordOut') put('readerInside');
  }
  if (device.wired) {
    put('doorPosition');
    if (leaves === 2) put('doorPositionInactive');
    put('lockSupply');
    if (candidate.release === 'free' || candidate.release === 'stairReentry') put('requestToExit');
  }
  if (device.family === 'battery') put('battery');

  for (const step of decision.requires) {
    if (step.clause.effect !== 'require') continue;
    for (const item of step.clause.items) put(item, 1, step.rule.id);
  }
  // Counted already, one magnet for each leaf.
  if (perLeaf > 1) parts.delete('doubleMagnet');
  for (const [item, plainer] of Object.entries(standsInFor)) {
    const better = parts.get(item as ItemId);
    const before = parts.get(plainer);
    if (!better || !before) continue;
    parts.set(better.item, { ...better, quantity: Math.max(better.quantity, before.quantity) });
    parts.delete(plainer);
  }
  return [...parts.values()].toSorted(
    (a, b) => stepOrder[items[a.item].step] - stepOrder[items[b.item].step],
  );
}

function slotsSayPair(decision: Decision): boolean {
  const type = valueIn(decision.slots, 'doorType');
  return type === 'pair' || type === 'doubleEgressPair';
}

function putHanging(decision: Decision, leaves: number, put: (item: ItemId, quantity: number) => void): void {
  const hanging = valueIn(decision.slots, 'hinges');
  const height = valueIn(decision.slots, 'leafHeightIn');
  if (hanging === 'continuous') put('continuousHinge', leaves);
  else if (hanging === 'pivot') put('pivots', leaves);
  else if ((hanging === 'butt' || hanging === 'swingClear') && typeof height === 'number') {
    put('hinges', leaves * hingesPerLeaf(height));
  }
}
