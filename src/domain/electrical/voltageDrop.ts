import { type Qty, qty } from '../units/quantity.ts';
import { refuse, roundDown, type Told } from '../units/told.ts';
import { atTemperature, conductorTemperatures, type Gauge, ohmsPerKft20 } from './conductor.ts';

/**
 * Resistance of both conductors of a run, Ω: 2 × one-way length × Ω per unit. Every length here is ONE WAY; a chart
 * that counts both ways has its length halved before it is compared.
 */
export function loopOhms(oneWay: Qty<'ft'>, perKft: Qty<'Ω/kft'>): Qty<'Ω'> {
  return qty((2 * oneWay * perKft) / 1000, 'Ω');
}
export function loopOhmsMetric(oneWay: Qty<'m'>, perKm: Qty<'Ω/km'>): Qty<'Ω'> {
  return qty((2 * oneWay * perKm) / 1000, 'Ω');
}

/** n equal pairs in parallel: Ω ÷ n. Valid for whole n from 1. Physics. */
export function parallelPairs(loop: Qty<'Ω'>, pairs: number): Told<{ loop: Qty<'Ω'> }> {
  if (!Number.isInteger(pairs) || pairs < 1) return refuse('The number of parallel pairs must be 1 or more.');
  return { ok: true, loop: qty(loop / pairs, 'Ω') };
}

/**
 * Drop when the load keeps its current, V: loop × I. The worse of the two forms, used for pass or fail, because
 * regulated and electronic devices do not draw less at low volts. Ohm’s law.
 */
export function drop(loop: Qty<'Ω'>, current: Qty<'A'>): Qty<'V'> {
  return qty(loop * current, 'V');
}

/** A plain coil: volts and current at the lock, V = Vs × R ÷ (R + loop). Valid for R over zero. Ohm’s law. */
export function atPlainCoil(
  supply: Qty<'V'>,
  coil: Qty<'Ω'>,
  loop: Qty<'Ω'>,
): Told<{ volts: Qty<'V'>; current: Qty<'A'> }> {
  if (!(coil > 0)) return refuse('The resistance of the coil must be over zero.');
  const current = supply / (coil + loop);
  return { ok: true, volts: qty(current * coil, 'V'), current: qty(current, 'A') };
}

/** Resistance of equal coils in parallel, Ω. */
export function coilsInParallel(one: Qty<'Ω'>, count: number): Qty<'Ω'> {
  return qty(one / count, 'Ω');
}

/** One stretch of a shared pair: its loop, and the current taken off at its far end. */
export interface Stretch {
  readonly loop: Qty<'Ω'>;
  readonly taken: Qty<'A'>;
}

/**
 * Drop at each tap of a shared pair, V, from the supply outward: every stretch carries the current of all taps beyond
 * it. Constant-current form. Ohm’s law.
 */
export function dropsOnSharedPair(stretches: readonly Stretch[]): readonly Qty<'V'>[] {
  let carried = stretches.reduce((sum, one) => sum + one.taken, 0);
  let dropped = 0;
  return stretches.map((one) => {
    dropped += one.loop * carried;
    carried -= one.taken;
    return qty(dropped, 'V');
  });
}

/** Longest one-way run, whole ft: V × share × 1000 ÷ (2 × Ω/kft × I), rounded down. `share` is 0.05 or 0.10. */
export function longestRun(
  supply: Qty<'V'>,
  share: number,
  perKft: Qty<'Ω/kft'>,
  current: Qty<'A'>,
): Told<{ oneWay: Qty<'ft'> }> {
  if (!(current > 0)) return refuse('The current must be over zero.');
  return { ok: true, oneWay: qty(roundDown((supply * share * 1000) / (2 * perKft * current)), 'ft') };
}

/** A device works within ±10 % of its rated volts unless its maker says otherwise. Maker’s wire guide, read. */
export const deviceTolerance = 0.1;
export function deviceWindow(
  rated: Qty<'V'>,
  tolerance = deviceTolerance,
): { readonly lowest: Qty<'V'>; readonly highest: Qty<'V'> } {
  return { lowest: qty(rated * (1 - tolerance), 'V'), highest: qty(rated * (1 + tolerance), 'V') };
}
export function voltageVerdict(
  atDevice: Qty<'V'>,
  rated: Qty<'V'>,
  tolerance = deviceTolerance,
): 'low' | 'ok' | 'high' {
  const { lowest, highest } = deviceWindow(rated, tolerance);
  // A thousandth of a volt, so that 24 V less exactly 10 % passes in binary arithmetic too.
  return atDevice < lowest - 0.001 ? 'low' : atDevice > highest + 0.001 ? 'high' : 'ok';
}

/** The same drop at 20, 50 and 75 °C conductor temperature, for the print. */
export function dropAtTemperatures(oneWay: Qty<'ft'>, gauge: Gauge, current: Qty<'A'>) {
  const at = (temperature: Qty<'°C'>) =>
    drop(loopOhms(oneWay, atTemperature(ohmsPerKft20(gauge), temperature)), current);
  return {
    catalog: at(conductorTemperatures.catalog),
    usual: at(conductorTemperatures.usual),
    nec: at(conductorTemperatures.nec),
  };
}
