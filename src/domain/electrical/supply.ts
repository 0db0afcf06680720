import type { FailMode } from '../devices/devices.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { refuse, roundDown, type Told } from '../units/told.ts';

/** A supply is loaded to 80 % of its continuous rating. Published trade rules name 75 to 80 %. */
export const supplyShare = 0.8;

export interface SupplyLoad {
  /** Everything energized all the time: fail-safe devices, readers, controllers, radio repeaters. */
  readonly steady: readonly Qty<'A'>[];
  /** Released together at worst: fail-secure devices of one schedule or one command. */
  readonly together: readonly Qty<'A'>[];
  /** Share of `together` that happens at once, 0 to 1. */
  readonly diversity: number;
  /** Largest single peak, where the supply has no peak rating of its own. */
  readonly peak?: Qty<'A'>;
}
function sum(currents: readonly number[]): number {
  return currents.reduce((total, one) => total + one, 0);
}

/** Current a supply must give, A: steady + together × diversity + one peak. Common practice, no source. */
export function currentNeeded(load: SupplyLoad): Qty<'A'> {
  return qty(sum(load.steady) + sum(load.together) * load.diversity + (load.peak ?? 0), 'A');
}

/** Whether the load stays within the share of the rating that may be used. Exactly at the share passes. */
export function supplyHolds(rating: Qty<'A'>, needed: Qty<'A'>, share = supplyShare): boolean {
  return needed <= rating * share + 1e-9;
}

/** Equal devices one supply carries, whole: rating × share ÷ each, rounded down. */
export function devicesOnSupply(
  rating: Qty<'A'>,
  each: Qty<'A'>,
  share = supplyShare,
): Told<{ count: number }> {
  if (!(each > 0)) return refuse('The current of one device must be over zero.');
  return { ok: true, count: roundDown((rating * share) / each) };
}

/** Average current for a battery, A: base + duty × (surge − base), duty 0 to 1. Maker’s supply manual, read. */
export function averageCurrent(base: Qty<'A'>, surge: Qty<'A'>, duty: number): Qty<'A'> {
  return qty(base + duty * (surge - base), 'A');
}

/**
 * Share of the time a lock’s coil is energized for the battery sum, 0 to 1: fail safe always, fail secure only while a
 * schedule holds it unlocked; a short release by card counts nothing. Worked out, common practice.
 */
export function batteryDuty(failMode: FailMode, heldUnlocked: boolean): 0 | 1 {
  return failMode === 'safe' || (failMode === 'secure' && heldUnlocked) ? 1 : 0;
}

/** Current at another voltage with the same power, A: I × V ÷ other V. Holds for dual-voltage coils. */
export function sameWatts(current: Qty<'A'>, volts: Qty<'V'>, other: Qty<'V'>): Qty<'A'> {
  return qty((current * volts) / other, 'A');
}
