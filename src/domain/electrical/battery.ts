import { type Qty, qty } from '../units/quantity.ts';
import { refuse, type Told } from '../units/told.ts';

/** Margin for age, × 1.25; on by default and printed. Policy of this schedule; published rules use 1.2 or 1.25. */
export const batteryMargin = 1.25;
/** For a discharge of 4 to 5 h a lead-acid set gives about 85 % of its 20 h rating. An option, off by default. */
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
