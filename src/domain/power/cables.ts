import { type ItemId, itemOf } from '../devices/items.ts';
import type { Gauge } from '../electrical/conductor.ts';

/** What a cable is for. `lock` and `release` carry lock current and get their gauge by calculation. */
export const cableUses = {
  lock: { name: 'Lock power', conductors: 2, gauge: null, shielded: false, longestFt: null },
  reader: { name: 'Reader', conductors: 6, gauge: 22, shielded: true, longestFt: 500 },
  contact: { name: 'Door position switch', conductors: 2, gauge: 22, shielded: false, longestFt: null },
  requestToExit: { name: 'Request to exit', conductors: 2, gauge: 22, shielded: false, longestFt: null },
  sensor: { name: 'Motion sensor', conductors: 4, gauge: 22, shielded: false, longestFt: null },
  release: {
    name: 'Release wiring, breaks lock power',
    conductors: 2,
    gauge: null,
    shielded: false,
    longestFt: null,
  },
  operator: { name: 'Operator control', conductors: 4, gauge: 18, shielded: false, longestFt: null },
} as const satisfies Record<string, CableUse>;

interface CableUse {
  readonly name: string;
  readonly conductors: number;
  /** Usual gauge; null: by calculation. Reader 500 ft and the sizes are common practice; contact and button cable read. */
  readonly gauge: Gauge | null;
  readonly shielded: boolean;
  readonly longestFt: number | null;
}
export type CableId = keyof typeof cableUses;

/** Cables of one use at an opening. */
export interface Cable {
  readonly use: CableId;
  readonly count: number;
}

const uses = Object.keys(cableUses) as readonly CableId[];

/** Every cable between the closet and one opening: each lock has a pair of its own. */
export function cablesOf(quantity: ReadonlyMap<ItemId, number>, locks: number): readonly Cable[] {
  const counts = new Map<CableId, number>([['lock', locks]]);
  for (const [item, count] of quantity) {
    const { cable } = itemOf(item);
    if (cable) counts.set(cable, cable === 'operator' ? 1 : (counts.get(cable) ?? 0) + count);
  }
  return uses.flatMap((use) => {
    const count = counts.get(use) ?? 0;
    return count > 0 ? [{ use, count }] : [];
  });
}

/** "18 AWG, 2 conductors", "22 AWG, 6 conductors, shielded": the article that is ordered. */
export function cableType(use: CableId, lockGauge: Gauge): string {
  const { conductors, gauge, shielded } = cableUses[use];
  return `${gauge ?? lockGauge} AWG, ${conductors} conductors${shielded ? ', shielded' : ''}`;
}
