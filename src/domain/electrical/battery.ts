import { type Qty, qty } from '../units/quantity.ts';
import { refuse, type Told } from '../units/told.ts';

/** Margin for age, × 1.25; on by default and printed. Policy of this schedule; published rules use 1.2 or 1.25. */
export const batteryMargin = 1.25;
/** For a discharge of 4 to 5 h a lead-acid set gives about 85 % of its 20 h rating. */
const shortRateFactor = 0.85;
/** Sealed lead-acid sizes, Ah at 12 V; 4, 7 and 12 read, the rest from general knowledge. */
export const batterySizes = [1.2, 2.3, 4, 5, 7, 9, 12, 18, 26, 33, 55, 75, 100] as const;

export interface Standby {
  readonly standby: Qty<'A'>;
  readonly standbyHours: Qty<'h'>;
  /** Current and time of the alarm that follows; both or neither. */
  readonly alarm?: { readonly current: Qty<'A'>; readonly hours: Qty<'h'> };
}

/** Charge needed, Ah: (I × h + I alarm × h alarm) × margin, ÷ 0.85 where the short-rate option is on. */
export function ampHours(load: Standby, margin: number = batteryMargin, shortRate = false): Qty<'Ah'> {
  const bare = load.standby * load.standbyHours + (load.alarm ? load.alarm.current * load.alarm.hours : 0);
  return qty((bare * margin) / (shortRate ? shortRateFactor : 1), 'Ah');
}

/**
 * Share of its 20 h rating that a sealed lead-acid set gives when it is emptied in so many hours: 85 % at 4 h, 60 % at
 * 1 h and below, in between by the logarithm of the time. From general knowledge; a battery’s own table goes before it.
 */
export function shareAtRate(hours: Qty<'h'>): number {
  const between = (from: number, low: number, to: number, high: number) =>
    low + ((high - low) * Math.log(hours / from)) / Math.log(to / from);
  if (hours >= 20) return 1;
  if (hours >= 4) return between(4, shortRateFactor, 20, 1);
  return hours > 1 ? between(1, 0.6, 4, shortRateFactor) : 0.6;
}

/** Share of its rating at 25 °C: 1 % less for each degree below. From general knowledge, about. */
export function shareAtTemperature(battery: Qty<'°C'>): number {
  return 1 - 0.01 * Math.max(0, 25 - battery);
}

/** What a standby of so many hours needs, with every factor that was put in. */
export interface Sized {
  readonly bare: Qty<'Ah'>;
  readonly margin: number;
  readonly rate: number;
  readonly temperature: number;
  readonly needed: Qty<'Ah'>;
}

/** Charge for a standby with age, rate and temperature counted in: I × h × 1.25 ÷ rate ÷ temperature. */
export function sizeStandby(current: Qty<'A'>, hours: Qty<'h'>, battery: Qty<'°C'>): Sized {
  const bare = qty(current * hours, 'Ah');
  const [rate, temperature] = [shareAtRate(hours), shareAtTemperature(battery)];
  const needed = qty((bare * batteryMargin) / (rate * temperature), 'Ah');
  return { bare, margin: batteryMargin, rate, temperature, needed };
}

/**
 * Hours a battery carries a current near the end of its life: the time at which the charge it gives at that rate is
 * used up. Found by halving, because the share depends on the hours.
 */
export function standbyHours(
  size: Qty<'Ah'>,
  current: Qty<'A'>,
  battery: Qty<'°C'>,
): Told<{ hours: Qty<'h'> }> {
  if (!(current > 0)) return refuse('The current must be over zero.');
  const given = (size / batteryMargin) * shareAtTemperature(battery);
  let [low, high] = [0, given / current];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (middle * current <= given * shareAtRate(qty(middle, 'h'))) low = middle;
    else high = middle;
  }
  return { ok: true, hours: qty(low, 'h') };
}

/** Current of the charger of an empty battery, A: a tenth of its ampere-hours. From general knowledge, about. */
export function chargerCurrent(size: Qty<'Ah'>): Qty<'A'> {
  return qty(size / 10, 'A');
}

/** Next size up. Never rounds down: 12.48 Ah is not covered by 12 Ah. Over 100 Ah it refuses. */
export function batterySize(needed: Qty<'Ah'>): Told<{ size: Qty<'Ah'> }> {
  // A billionth of an ampere-hour is arithmetic, not charge: 5.0 Ah fit a 5 Ah battery.
  const size = batterySizes.find((one) => one >= needed - 1e-9);
  if (size === undefined)
    return refuse('More than 100 Ah are needed: divide the load among several supplies.');
  return { ok: true, size: qty(size, 'Ah') };
}

/** Equal batteries of one age: volts add in series, ampere-hours add in parallel. Maker’s supply manual, read. */
export function bank(
  volts: Qty<'V'>,
  size: Qty<'Ah'>,
  inSeries: number,
  inParallel: number,
): { readonly volts: Qty<'V'>; readonly size: Qty<'Ah'> } {
  return { volts: qty(volts * inSeries, 'V'), size: qty(size * inParallel, 'Ah') };
}

/** Volts at the end of discharge, 1.75 V per cell: 10.5 V of a 12 V set, 21.0 V of a 24 V set. General knowledge. */
export function endOfDischarge(nominal: Qty<'V'>): Qty<'V'> {
  return qty((nominal / 2) * 1.75, 'V');
}

/** Standby hours of UL 294 performance levels I to IV. From general knowledge. */
export const ul294StandbyHours = { I: 0, II: 0.5, III: 2, IV: 4 } as const;
