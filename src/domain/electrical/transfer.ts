import type { Qty } from '../units/quantity.ts';
import { drop, loopOhms } from './voltageDrop.ts';
import { ohmsPerKft20 } from './conductor.ts';

export interface LeafWires {
  readonly requestToExit: boolean;
  readonly latchMonitor: boolean;
  readonly doorPosition: boolean;
  readonly reader: boolean;
}

/** Conductors over the hinge: 2 for the lock and 2 for each further function. Worked out from a dealer’s count, read. */
export function conductorsOverHinge(wires: LeafWires): number {
  return (
    2 + 2 * [wires.requestToExit, wires.latchMonitor, wires.doorPosition, wires.reader].filter(Boolean).length
  );
}

/** Drop in the thin wires of a transfer at the device’s peak, V. Gauge 24 to 28 usual; 20 °C. Ohm’s law. */
export function transferDrop(length: Qty<'ft'>, gauge: 24 | 26 | 28 | 18, peak: Qty<'A'>): Qty<'V'> {
  return drop(loopOhms(length, ohmsPerKft20(gauge)), peak);
}
