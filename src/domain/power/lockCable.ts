import { exactVolts, feet, volts } from './figures.ts';
import { lengthFromWords } from './place.ts';
import type { FedOpening } from './powerPlan.ts';

/**
 * What a hardware set says of the lock cable: how long, how thick, and what the lock must still work at when the
 * battery is at its end.
 */
export function lockCableInWords(fed: FedOpening | undefined): string {
  const run = fed?.placing;
  if (!fed || !run || run.feet === null) return 'length not surveyed';
  const from = run.from === 'plan' ? ` ${lengthFromWords.plan}` : '';
  const length = `${feet(run.feet)} one way${from}`;
  const gauge = gaugeInWords(fed);
  return gauge === '' ? length : `${length}, ${gauge}`;
}

/** The thinnest usual conductor over which the lock gets its volts; empty where a figure is missing. */
export function gaugeInWords({ sizing }: FedOpening): string {
  if (!sizing) return '';
  if (sizing.gauge === null) return 'no usual cable carries the lock that far: put a supply near the door';
  const battery =
    sizing.mustWorkAtV === null
      ? `${exactVolts(sizing.at.batteryV)} at the end of the battery`
      : `to be listed to work at ${volts(sizing.mustWorkAtV)} on battery`;
  return `${conductorInWords({ sizing })} for the lock, ${battery}`;
}

/** "16 AWG or thicker (1.5 mm²)". */
export function conductorInWords(fed: Pick<FedOpening, 'sizing'> | undefined): string {
  const sizing = fed?.sizing;
  if (!sizing) return '';
  if (sizing.gauge === null) return 'a supply near the door';
  return `${sizing.gauge} AWG or thicker${sizing.metric === null ? '' : ` (${sizing.metric} mm²)`}`;
}
