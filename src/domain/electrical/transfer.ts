import type { Qty } from '../units/quantity.ts';
import { drop, loopOhms } from './voltageDrop.ts';
import { ohmsPerKft20 } from './conductor.ts';

export interface LeafWires {
  readonly requestToExit: boolean;
  readonly latchMonitor: boolean;
  readonly doorPosition: boolean;
  /** A reader in the leaf is no pair: two for its power and its data besides. */
  readonly reader: 'none' | 'osdp' | 'wiegand';
}

/** Power pair and data pair of an OSDP reader; power, two data lines, and lamp and sounder of an older one. From general knowledge. */
const readerConductors = { none: 0, osdp: 4, wiegand: 6 } as const;

/** Conductors over the hinge: 2 for the lock and 2 for each switch, a dealer’s count, read; a reader by its kind. */
export function conductorsOverHinge(wires: LeafWires): number {
  const switches = [wires.requestToExit, wires.latchMonitor, wires.doorPosition].filter(Boolean).length;
  return 2 + 2 * switches + readerConductors[wires.reader];
}

/** Gauge of the power pair of a transfer: 24 to 28 usual, 18 and 20 offered for heavy devices. */
export type TransferGauge = 18 | 20 | 24 | 26 | 28;

/** Loop of the thin wires of a transfer, Ω at 20 °C. */
export function transferOhms(length: Qty<'ft'>, gauge: TransferGauge): Qty<'Ω'> {
  return loopOhms(length, ohmsPerKft20(gauge));
}

/** Drop in the thin wires of a transfer at the device’s peak, V; 20 °C. Ohm’s law. */
export function transferDrop(length: Qty<'ft'>, gauge: TransferGauge, peak: Qty<'A'>): Qty<'V'> {
  return drop(transferOhms(length, gauge), peak);
}
