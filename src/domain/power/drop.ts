import {
  conductorTemperatures,
  flexiblePerKft,
  type Gauge,
  metricSizes,
  type MetricSize,
  strandedPerKft,
} from '../electrical/conductor.ts';
import { endOfDischarge } from '../electrical/battery.ts';
import { transferOhms } from '../electrical/transfer.ts';
import { atPlainCoil, drop, loopOhms } from '../electrical/voltageDrop.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { roundDown } from '../units/told.ts';
import type { Transfer } from './demand.ts';
import type { Rating } from './productBook.ts';

/** Sizes in which lock cable is usually sold, thinnest first. Common practice, no source. */
export const usualGauges: readonly Gauge[] = [22, 20, 18, 16, 14, 12];
export const thickestGauge: Gauge = 12;

/**
 * Share of the rated volts that steady current may lose on the way. The device works down to 10 %; the other half of
 * that belongs to the supply, which may be 5 % low. Maker’s wire guide and a lock maker’s chart, read.
 */
export const wireShare = 0.05;

/** One lock at the end of its cable. Every length is one way, slack counted in. */
export interface Run {
  readonly rating: Rating;
  readonly volts: number;
  readonly lengthFt: number;
  readonly transfer: Transfer | undefined;
  /** The supply keeps its volts while the battery falls. */
  readonly holdsVolts: boolean;
}

/** What one gauge does on a run. */
export interface AtGauge {
  /** Volts lost by steady current, transfer counted in, at 50 °C; and at 20 and 75 °C beside it. */
  readonly dropV: number;
  readonly dropAt20: number;
  readonly dropAt75: number;
  readonly steadyV: number;
  /** At the device while it starts. */
  readonly peakV: number;
  /** The same as a plain coil would have it: less than the constant-current form above, and not what is judged. */
  readonly coilV: number;
  /** At the end of the battery, steady. */
  readonly batteryV: number;
  /** Within the share of the wire, and started above the least volts. */
  readonly passes: boolean;
  /** Still works when the battery is at its end. */
  readonly passesOnBattery: boolean;
}

/** What a run comes out at. */
export interface Sizing {
  /** Null: no usual cable carries it; the lock wants a supply near the door. */
  readonly gauge: Gauge | null;
  readonly metric: MetricSize | null;
  /** At the gauge named, or at the thickest. */
  readonly at: AtGauge;
  /** The longest run this gauge carries, whole feet, slack counted in. */
  readonly longestFt: number;
  /** What the device must be listed to work at, where the battery falls below its least volts; null where it does not. */
  readonly mustWorkAtV: number | null;
}

const usual = conductorTemperatures.usual;
const ohmsOf = (ohms: Qty<'Ω/kft'>, { lengthFt, transfer }: Run) =>
  qty(
    loopOhms(qty(lengthFt, 'ft'), ohms) +
      (transfer ? transferOhms(qty(transfer.lengthFt, 'ft'), transfer.gauge) : 0),
    'Ω',
  );

export function endOfBattery(volts: number, holdsVolts: boolean): number {
  return holdsVolts ? volts : endOfDischarge(qty(volts, 'V'));
}

function judged(run: Run, at: (temperature: Qty<'°C'>) => Qty<'Ω/kft'>): AtGauge {
  const { rating, volts } = run;
  const lost = (temperature: Qty<'°C'>) => drop(ohmsOf(at(temperature), run), qty(rating.steadyA, 'A'));
  const loop = ohmsOf(at(usual), run);
  const dropV = lost(usual);
  const peakV = volts - drop(loop, qty(rating.peakA, 'A'));
  const coil = atPlainCoil(qty(volts, 'V'), qty(volts / rating.steadyA, 'Ω'), loop);
  const batteryV = endOfBattery(volts, run.holdsVolts) - dropV;
  return {
    dropV,
    dropAt20: lost(conductorTemperatures.catalog),
    dropAt75: lost(conductorTemperatures.nec),
    steadyV: volts - dropV,
    peakV,
    coilV: coil.ok ? coil.volts : volts,
    batteryV,
    // A thousandth of a volt is arithmetic, not wire.
    passes: dropV <= volts * wireShare + 0.001 && peakV >= rating.leastVolts - 0.001,
    passesOnBattery: batteryV >= rating.leastVolts - 0.001,
  };
}

export function atGauge(run: Run, gauge: Gauge): AtGauge {
  return judged(run, (temperature) => strandedPerKft(gauge, temperature));
}

/** Longest one-way run of a gauge, whole feet: the shorter of what steady current and what the start allow. */
export function longestAt(run: Run, gauge: Gauge): number {
  const { rating, volts, transfer } = run;
  const perFt = (2 * strandedPerKft(gauge, usual)) / 1000;
  const inTransfer = transfer ? transferOhms(qty(transfer.lengthFt, 'ft'), transfer.gauge) : 0;
  const left = (lost: number, amps: number) => (lost / amps - inTransfer) / perFt;
  const feet = Math.min(
    left(volts * wireShare, rating.steadyA),
    left(volts - rating.leastVolts, rating.peakA),
  );
  return Math.max(0, roundDown(feet));
}

/**
 * The thinnest usual cable over which the lock gets its volts on line power, and, where any cable can do that, at the
 * end of the battery as well. A battery that falls below the device’s least volts by itself no copper mends: the device
 * must then be listed for less.
 */
export function sizeRun(run: Run): Sizing {
  const { rating } = run;
  const helps = endOfBattery(run.volts, run.holdsVolts) > rating.leastVolts;
  const fits = ({ passes, passesOnBattery }: AtGauge) => passes && (passesOnBattery || !helps);
  const gauge =
    usualGauges.find((one) => fits(atGauge(run, one))) ??
    usualGauges.find((one) => atGauge(run, one).passes) ??
    null;
  const metric = metricSizes.find((size) =>
    fits(judged(run, (temperature) => flexiblePerKft(size, temperature))),
  );
  const shown = gauge ?? thickestGauge;
  const at = atGauge(run, shown);
  return {
    gauge,
    metric: metric ?? null,
    at,
    longestFt: longestAt(run, shown),
    mustWorkAtV: at.passesOnBattery ? null : Math.max(0, roundDown(at.batteryV * 10) / 10),
  };
}
