import type { Decision } from '../decide/decision.ts';
import type { Closet } from '../model/power.ts';
import { openingsInOrder, type Project } from '../model/project.ts';
import { roundUp } from '../units/told.ts';
import { emptyBox, type Filled, put } from './box.ts';
import { type Demand, demandOf, doorsPerController } from './demand.ts';
import { type Sizing, sizeRun } from './drop.ts';
import { closetsInOrder, type Placing, placingOf, slackFt } from './place.ts';
import { planDistances } from './planDistance.ts';
import { type PoeState, poeStateOf } from './poe.ts';
import { type Book, bookOf } from './productBook.ts';
import { type SupplyState, supplyStateOf } from './supplyState.ts';

/** One opening with where it is fed from and what its lock cable must be. */
export interface FedOpening {
  readonly demand: Demand;
  readonly placing: Placing;
  /** One way with slack; null while the run is not known. */
  readonly lengthFt: number | null;
  /** Of the lock pair; undefined where a figure is missing or no lock is fed. */
  readonly sizing: Sizing | undefined;
}

export interface ClosetState {
  /** Null: what is not assigned to any closet. */
  readonly closet: Closet | null;
  readonly name: string;
  readonly floorId: string | null;
  readonly openings: readonly FedOpening[];
  readonly supplies: readonly SupplyState[];
  readonly readers: number;
  /** Controllers, two doors each. */
  readonly controllers: number;
}

export interface PowerPlan {
  readonly openings: readonly FedOpening[];
  readonly byId: ReadonlyMap<string, FedOpening>;
  readonly closets: readonly ClosetState[];
  /** Every supply, those in no closet last. */
  readonly supplies: readonly SupplyState[];
  readonly poe: readonly PoeState[];
}

/** What every opening asks of a supply, in the order of the schedule. */
export function demandsOf(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  book: Book = bookOf(project),
): readonly Demand[] {
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    const demand = decision && demandOf(opening, decision, book);
    return demand ? [demand] : [];
  });
}

export const notAssigned = 'Not assigned to a closet';

/** Runs, supplies and closets of a building, from what its openings ask for. */
export function layOut(project: Project, demands: readonly Demand[]): PowerPlan {
  const distances = planDistances(project);
  const boxes = new Map<string, Filled>();
  for (const id of Object.keys(project.supplies)) boxes.set(id, emptyBox());
  const openings = demands.map((demand): FedOpening => {
    const placing = placingOf(project, demand, distances);
    const supply = placing.supplyId === null ? undefined : project.supplies[placing.supplyId];
    if (supply) put(boxes.get(supply.id) as Filled, demand);
    const lengthFt = placing.feet === null ? null : placing.feet + slackFt;
    return { demand, placing, lengthFt, sizing: sizingOf(demand, lengthFt, supply?.holdsVolts ?? false) };
  });
  const closets = closetsInOrder(project);
  const byCloset = new Map<string | null, FedOpening[]>([
    ...closets.map(({ id }): [string, FedOpening[]] => [id, []]),
    [null, []],
  ]);
  for (const one of openings) byCloset.get(one.placing.closetId)?.push(one);
  const states = Object.values(project.supplies).map((supply) =>
    supplyStateOf(
      supply,
      supply.closetId === null ? undefined : project.closets[supply.closetId],
      boxes.get(supply.id) as Filled,
    ),
  );
  const named = states.toSorted((a, b) =>
    a.supply.name.localeCompare(b.supply.name, 'en', { numeric: true }),
  );
  const known = new Set<string | null>(closets.map(({ id }) => id));
  const closetStates = [...closets, null].map((closet) =>
    closetStateOf(
      closet,
      byCloset.get(closet?.id ?? null) ?? [],
      named.filter(({ supply }) =>
        closet ? supply.closetId === closet.id : !known.has(supply.closetId ?? ''),
      ),
    ),
  );
  const shown = closetStates.filter(
    ({ closet, openings: here, supplies }) => closet || here.length + supplies.length > 0,
  );
  return {
    openings,
    byId: new Map(openings.map((one) => [one.demand.id, one])),
    closets: shown,
    supplies: shown.flatMap(({ supplies }) => supplies),
    poe: demands.flatMap((demand) => poeStateOf(demand) ?? []),
  };
}

export function powerPlan(project: Project, decisions: ReadonlyMap<string, Decision>): PowerPlan {
  return layOut(project, demandsOf(project, decisions));
}

function sizingOf(
  { lock, volts, transfer }: Demand,
  lengthFt: number | null,
  holdsVolts: boolean,
): Sizing | undefined {
  const rating = lock?.rating;
  if (!rating || volts === null || lengthFt === null) return undefined;
  return sizeRun({ rating, volts, lengthFt, transfer, holdsVolts });
}

function closetStateOf(
  closet: Closet | null,
  openings: readonly FedOpening[],
  supplies: readonly SupplyState[],
): ClosetState {
  const doors = openings.filter(({ demand }) => demand.loads.some(({ of }) => of === 'controller')).length;
  return {
    closet,
    name: closet?.name ?? notAssigned,
    floorId: closet?.floorId ?? null,
    openings,
    supplies,
    readers: openings.reduce((sum, { demand }) => sum + demand.readers, 0),
    controllers: roundUp(doors / doorsPerController),
  };
}
