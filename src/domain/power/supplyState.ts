import { chargerCurrent, batterySize, type Sized, sizeStandby, standbyHours } from '../electrical/battery.ts';
import { supplyShare } from '../electrical/supply.ts';
import type { Closet, Supply } from '../model/power.ts';
import { qty } from '../units/quantity.ts';
import type { Told } from '../units/told.ts';
import { continuousA, type Filled, outputLimit, outputsUsed } from './box.ts';
import type { Demand } from './demand.ts';

/** Where nobody measured: a conditioned closet. Common practice, no source. */
const usualBatteryC = 20;

export interface BatteryState {
  /** What the battery carries: all that stands under current, and what a schedule holds released. */
  readonly currentA: number;
  /** Null where nobody stated for how long. */
  readonly hours: number | null;
  readonly temperatureC: number;
  readonly sized: Sized | undefined;
  readonly next: Told<{ size: number }> | undefined;
  /** Of the battery that is there, near the end of its life; null where none is, or nobody looked. */
  readonly runtimeH: number | null;
  readonly chargerA: number | null;
}

/** One supply with what hangs on it. Amperes. */
export interface SupplyState {
  readonly supply: Supply;
  readonly demands: readonly Demand[];
  readonly standingA: number;
  readonly releaseA: number;
  readonly continuousA: number;
  readonly peakA: number;
  /** 80 % of the rating. */
  readonly usableA: number;
  readonly leftA: number;
  readonly outputsUsed: number;
  readonly outputLimitA: number | undefined;
  readonly battery: BatteryState;
}

export function supplyStateOf(supply: Supply, closet: Closet | undefined, filled: Filled): SupplyState {
  const used = continuousA(filled);
  const usableA = supply.amps * supplyShare;
  return {
    supply,
    demands: filled.demands,
    standingA: filled.standingA,
    releaseA: filled.releaseA,
    continuousA: used,
    peakA: used + filled.peakExtraA,
    usableA,
    leftA: usableA - used,
    outputsUsed: outputsUsed(filled.demands.length),
    outputLimitA: outputLimit(supply)?.steadyA,
    battery: batteryOf(supply, closet, filled),
  };
}

/** A fail-secure lock that a card releases for a moment costs the battery nothing; one held by a schedule all of it. */
function batteryOf(supply: Supply, closet: Closet | undefined, { demands, standingA }: Filled): BatteryState {
  const held = demands.reduce((sum, one) => sum + (one.scheduled ? one.releaseA : 0), 0);
  const currentA = standingA + held;
  const stated = demands.flatMap(({ standbyHours: hours }) => (hours === null ? [] : [hours]));
  const hours = stated.length === 0 ? null : Math.max(...stated);
  const temperatureC = closet?.temperatureC ?? usualBatteryC;
  const sized =
    hours !== null && hours > 0 && currentA > 0
      ? sizeStandby(qty(currentA, 'A'), qty(hours, 'h'), qty(temperatureC, '°C'))
      : undefined;
  const next = sized && batterySize(sized.needed);
  const there = supply.batteryAh;
  const runtime =
    there !== null && there > 0 && currentA > 0
      ? standbyHours(qty(there, 'Ah'), qty(currentA, 'A'), qty(temperatureC, '°C'))
      : undefined;
  const charged = there !== null && there > 0 ? there : next?.ok ? next.size : null;
  return {
    currentA,
    hours,
    temperatureC,
    sized,
    next,
    runtimeH: runtime?.ok ? runtime.hours : null,
    chargerA: charged === null ? null : chargerCurrent(qty(charged, 'Ah')),
  };
}
