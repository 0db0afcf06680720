import type { Edit } from '../commands/command.ts';
import type { Closet, Supply } from '../model/power.ts';
import { compareMarks, type Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import { emptyBox, put } from './box.ts';
import type { Demand } from './demand.ts';
import { type Box, largestFirst, lowerBound, packNew, putBest } from './pack.ts';
import { closetsInOrder, nearestCloset, placingOf } from './place.ts';
import { planDistances } from './planDistance.ts';

export interface Assigned {
  /** One step: new supplies, then closet and supply of each opening that had none. */
  readonly edits: readonly Edit[];
  readonly newSupplies: number;
  readonly supplies: number;
  /** Fewer than these cannot carry it. */
  readonly bound: number;
  /** Openings no supply here can carry. */
  readonly left: readonly string[];
  readonly says: string;
}

interface Waiting {
  readonly demand: Demand;
  readonly newCloset: boolean;
}

/**
 * What the tool would assign: each opening without a closet goes to the nearest, and each without a supply to one of
 * its closet, or to a new one. What a person assigned stays as it is.
 */
export function assignByTool(
  project: Project,
  demands: readonly Demand[],
  newId: () => string,
  stamp: { readonly at?: string; readonly by?: string } = {},
): Assigned {
  const closets = closetsInOrder(project);
  const distances = planDistances(project);
  const boxes = new Map<string, Box[]>();
  for (const supply of Object.values(project.supplies)) {
    if (supply.closetId === null) continue;
    listIn(boxes, supply.closetId).push({ supply, filled: emptyBox() });
  }
  const waiting = new Map<string, Waiting[]>();
  for (const demand of demands) {
    if (demand.volts === null || demand.source !== 'supply') continue;
    const placing = placingOf(project, demand, distances);
    const kept = placing.supplyId;
    if (kept !== null) {
      const home = project.supplies[kept]?.closetId;
      const box = home ? boxes.get(home)?.find(({ supply }) => supply.id === kept) : undefined;
      if (box) put(box.filled, demand);
      continue;
    }
    const closetId = placing.closetId ?? nearestCloset(project, demand, closets, distances)?.id;
    if (closetId === undefined) continue;
    listIn(waiting, closetId).push({ demand, newCloset: placing.closetId === null });
  }
  const edits: Edit[] = [];
  const left: Demand[] = [];
  let [newSupplies, supplies, bound] = [0, 0, 0];
  for (const closet of closets) {
    const here = listIn(boxes, closet.id);
    const list = waiting.get(closet.id) ?? [];
    const fresh = fillCloset(closet, here, list, newId, left);
    for (const supply of fresh) edits.push({ kind: 'putSupply', id: supply.id, value: supply });
    newSupplies += fresh.length;
    const added = new Map(
      here.flatMap(({ supply, filled }) => filled.demands.map((one) => [one.id, supply])),
    );
    for (const { demand, newCloset } of list) {
      const supply = added.get(demand.id);
      if (newCloset)
        edits.push({
          kind: 'setRun',
          id: demand.id,
          field: 'closetId',
          value: { value: closet.id, ...stamp },
        });
      if (supply)
        edits.push({
          kind: 'setRun',
          id: demand.id,
          field: 'supplyId',
          value: { value: supply.id, ...stamp },
        });
    }
    const used = here.filter(({ filled }) => filled.demands.length > 0);
    supplies += used.length;
    bound += boundOf(used);
  }
  const marks = left.map(({ mark }) => mark).toSorted(compareMarks);
  return {
    edits,
    newSupplies,
    supplies,
    bound,
    left: marks,
    says: assignedInWords(closets.length, supplies, bound, newSupplies, marks),
  };
}

/** Supplies of one voltage are compared with each other only. */
export function boundOf(boxes: readonly Box[]): number {
  const volts = new Set(boxes.map(({ supply }) => supply.volts));
  return [...volts].reduce(
    (sum, one) => sum + lowerBound(boxes.filter(({ supply }) => supply.volts === one)),
    0,
  );
}

/** Fills what hangs there first; what is left over gets supplies of its own, named after the closet. */
function fillCloset(
  closet: Closet,
  here: Box[],
  list: readonly Waiting[],
  newId: () => string,
  left: Demand[],
): readonly Supply[] {
  const rest = largestFirst(list.map(({ demand }) => demand)).filter((demand) => !putBest(here, demand));
  const made: Supply[] = [];
  for (const volts of new Set(rest.map((one) => one.volts as number))) {
    const packed = packNew(
      volts,
      rest.filter((one) => one.volts === volts),
    );
    left.push(...packed.left);
    for (const { supply, filled } of packed.boxes) {
      const names = new Set(here.map((one) => one.supply.name));
      let number = here.length + 1;
      while (names.has(`${closet.name} PS-${number}`)) number += 1;
      const named = { ...supply, id: newId(), name: `${closet.name} PS-${number}`, closetId: closet.id };
      here.push({ supply: named, filled });
      made.push(named);
    }
  }
  return made;
}

function listIn<T>(map: Map<string, T[]>, key: string): T[] {
  let list = map.get(key);
  if (!list) map.set(key, (list = []));
  return list;
}

function assignedInWords(
  closets: number,
  supplies: number,
  bound: number,
  made: number,
  left: readonly string[],
): string {
  if (closets === 0) return 'No closet is entered yet, so nothing could be assigned.';
  const far =
    supplies === bound
      ? `${counted(supplies, 'supply', 'supplies')} in use, and fewer cannot carry the load`
      : `${counted(supplies, 'supply', 'supplies')} in use, ${supplies - bound} above the ${bound} that the load alone would need`;
  const fresh = made === 0 ? '' : `, ${made} of them new`;
  const rest =
    left.length === 0 ? '' : ` No usual supply carries ${left.join(', ')}: give each a supply by hand.`;
  return `${far}${fresh}.${rest}`;
}
