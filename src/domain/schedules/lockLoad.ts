import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../decide/factView.ts';
import { devicesOn } from '../decide/inPlace.ts';
import { atTemperature, conductorTemperatures, type Gauge, ohmsPerKft20 } from '../electrical/conductor.ts';
import { sameWatts } from '../electrical/supply.ts';
import { deviceTolerance, longestRun } from '../electrical/voltageDrop.ts';
import { type Qty, qty } from '../units/quantity.ts';

export interface LockLoad {
  readonly volts: Qty<'V'>;
  /** While energized, all devices of the opening. */
  readonly steady: Qty<'A'>;
  /** When they start, all at once. */
  readonly inrush: Qty<'A'>;
  /** Energized all day while locked: fail safe, or held by power. */
  readonly allDay: boolean;
}

const ratedVolts = qty(24, 'V');
/** Sizes in which lock cable is usually sold; thicker runs are designed one by one. Common practice, no source. */
const usualGauges: readonly Gauge[] = [22, 20, 18, 16, 14, 12];

/** What the lock of an opening draws, by the default figures of its device; undefined where that is not known. */
export function lockLoad({ chosen, slots }: Decision): LockLoad | undefined {
  const volts = Number(valueIn(slots, 'supplyVolts'));
  if (!chosen?.candidate.device.wired || !(volts > 0)) return undefined;
  const { device, failMode } = chosen.candidate;
  const count = devicesOn({ chosen, slots });
  const at = (amps: number) => sameWatts(qty(amps * count, 'A'), ratedVolts, qty(volts, 'V'));
  return {
    volts: qty(volts, 'V'),
    steady: at(device.steadyA24),
    inrush: at(device.inrushA24),
    allDay: device.holdsWith === 'power' || failMode === 'safe',
  };
}

/** The thinnest usual conductor over which the lock still starts within its tolerance, in words; empty if unknown. */
export function lockGauge(decision: Decision): string {
  const load = lockLoad(decision);
  const feet = valueIn(decision.slots, 'distanceToSupplyFt');
  if (!load || typeof feet !== 'number') return '';
  const fits = usualGauges.find((gauge) => {
    const ohms = atTemperature(ohmsPerKft20(gauge), conductorTemperatures.usual);
    const run = longestRun(load.volts, deviceTolerance, ohms, load.inrush);
    return run.ok && run.oneWay >= feet;
  });
  return fits === undefined
    ? 'no usual cable carries the start that far: own supply near the door'
    : `${fits} AWG or thicker for the lock`;
}
