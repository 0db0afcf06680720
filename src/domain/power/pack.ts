import { supplyShare } from '../electrical/supply.ts';
import type { Supply } from '../model/power.ts';
import { roundUp } from '../units/told.ts';
import { continuousA, emptyBox, type Filled, limitAgainst, put } from './box.ts';
import type { Demand } from './demand.ts';

export interface Box {
  readonly supply: Supply;
  readonly filled: Filled;
}
export type Size = Pick<Supply, 'volts' | 'amps' | 'peakAmps' | 'outputs' | 'class2'>;

/** Sizes in which lock supplies are usually sold, smallest first. Common practice, no source. */
const usualSizes: readonly Omit<Size, 'volts'>[] = [
  { amps: 4, peakAmps: null, outputs: 8, class2: true },
  { amps: 6, peakAmps: null, outputs: 12, class2: true },
  { amps: 10, peakAmps: null, outputs: 24, class2: true },
];
/** For a device whose start no shared supply carries: beside the door, with a peak rating. Common practice, no source. */
const ownSize: Omit<Size, 'volts'> = { amps: 2, peakAmps: 32, outputs: 4, class2: false };

const asSupply = (size: Size): Supply => ({
  id: '',
  name: '',
  closetId: null,
  current: 'dc',
  batteryAh: null,
  holdsVolts: false,
  fedBy: 'linePower',
  ...size,
});

const ampsOf = (demand: Demand) => demand.standingA + demand.releaseA;
export const largestFirst = (demands: readonly Demand[]): readonly Demand[] =>
  demands.toSorted((a, b) => ampsOf(b) - ampsOf(a) || (a.id < b.id ? -1 : 1));

/** Room that is left, in the share of the rating that may be used. */
const room = ({ supply, filled }: Box) => supply.amps * supplyShare - continuousA(filled);

/** Puts a demand where the least room is left after it; false where no box takes it. */
export function putBest(boxes: readonly Box[], demand: Demand): boolean {
  let best: Box | undefined;
  for (const box of boxes) {
    if (limitAgainst(box.supply, box.filled, demand) !== undefined) continue;
    if (!best || room(box) < room(best)) best = box;
  }
  if (best) put(best.filled, demand);
  return best !== undefined;
}

/** Boxes of one size, as many as it takes; undefined where one demand alone is more than the size may carry. */
function fill(size: Size, demands: readonly Demand[]): readonly Box[] | undefined {
  const boxes: Box[] = [];
  for (const demand of demands) {
    if (putBest(boxes, demand)) continue;
    const box = { supply: asSupply(size), filled: emptyBox() };
    if (limitAgainst(box.supply, box.filled, demand) !== undefined) return undefined;
    put(box.filled, demand);
    boxes.push(box);
  }
  return boxes;
}

/** The smallest usual size that still carries what is in the box. */
function shrunk({ supply, filled }: Box): Box {
  for (const usual of usualSizes) {
    const smaller = asSupply({ ...usual, volts: supply.volts });
    if (smaller.amps >= supply.amps) break;
    const again = emptyBox();
    if (filled.demands.every((one) => limitAgainst(smaller, again, one) === undefined && putIn(again, one)))
      return { supply: smaller, filled: again };
  }
  return { supply, filled };
}
function putIn(box: Filled, demand: Demand): boolean {
  put(box, demand);
  return true;
}

export interface Packed {
  readonly boxes: readonly Box[];
  /** What no usual supply carries. */
  readonly left: readonly Demand[];
}

/** New supplies of one closet and one voltage: as few as possible, then as small as possible. */
export function packNew(volts: number, demands: readonly Demand[]): Packed {
  const own = demands.filter((one) => one.ownSupply);
  const shared = largestFirst(demands.filter((one) => !one.ownSupply));
  const left: Demand[] = [];
  const alone = own.flatMap((one) => {
    const boxes = fill({ ...ownSize, volts }, [one]);
    if (!boxes) left.push(one);
    return boxes ?? [];
  });
  let best: readonly Box[] | undefined;
  const largest = { ...(usualSizes.at(-1) as Omit<Size, 'volts'>), volts };
  const taken = shared.filter((one) => {
    const goes = limitAgainst(asSupply(largest), emptyBox(), one) === undefined;
    if (!goes) left.push(one);
    return goes;
  });
  for (const usual of usualSizes) {
    const boxes = fill({ ...usual, volts }, taken);
    if (boxes && (!best || boxes.length < best.length)) best = boxes;
  }
  return { boxes: [...alone, ...(best ?? []).map(shrunk)], left };
}

/**
 * The fewest of these supplies that could carry the load if it could be cut anywhere: by amperes, by outputs, and one
 * for each that must stand alone. No packing can do with fewer.
 */
export function lowerBound(boxes: readonly Pick<Box, 'supply' | 'filled'>[]): number {
  const alone = boxes.filter(({ filled }) => filled.alone).length;
  const shared = boxes.filter(({ filled }) => !filled.alone && filled.demands.length > 0);
  const fewest = (needed: number, gives: (supply: Supply) => number) => {
    let [rest, count] = [needed, 0];
    for (const most of shared.map(({ supply }) => gives(supply)).toSorted((a, b) => b - a)) {
      if (rest <= 1e-9) break;
      rest -= most;
      count += 1;
    }
    return count;
  };
  const amps = shared.reduce((sum, { filled }) => sum + continuousA(filled), 0);
  const doors = shared.reduce((sum, { filled }) => sum + filled.demands.length, 0);
  return (
    alone +
    Math.max(
      fewest(amps, (supply) => supply.amps * supplyShare),
      fewest(roundUp(doors * 1.5), (supply) => supply.outputs),
    )
  );
}
