import { valueIn, slotOf } from '../logic/slots.ts';
import type { Decision } from '../decide/decision.ts';
import { peopleIn } from '../egress/spaceLoad.ts';
import type { FactKey, FactValue } from '../model/fields.ts';
import { endsTheWay, type Opening, type Project, type Space } from '../model/project.ts';
import type { Simulated } from '../decide/whatHappens.ts';
import { standsAt } from '../decide/whatStands.ts';

/** One opening as an edge of the building. */
export interface Edge {
  readonly opening: Opening;
  readonly decision: Decision | undefined;
  /** Undefined where nothing was chosen and nobody said what is there: then nobody can say what it does. */
  readonly simulated: Simulated | undefined;
  /** Index of the space on the secure side and on the side people leave from; `nowhere` when not stated. */
  readonly from: number;
  readonly to: number;
  /** People leave through it both ways. */
  readonly bothWays: boolean;
}

/**
 * The building as spaces joined by openings, in plain arrays: a graph library costs several times as much here,
 * and every walk is a few lines. Node `nowhere` stands for "not stated".
 */
export interface Plan {
  readonly project: Project;
  readonly spaces: readonly Space[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly nowhere: number;
  readonly edges: readonly Edge[];
  /** Edges at each node, first and last place in `around`. */
  readonly first: Int32Array;
  readonly around: Int32Array;
  readonly outside: readonly number[];
  readonly oneSided: readonly Opening[];
  readonly sameSpace: readonly Opening[];
}

export type HoursOf = (opening: Opening) => number | null;

export function planOf(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  hoursOf: HoursOf = () => null,
): Plan {
  const spaces = Object.values(project.spaces);
  const indexOf = new Map(spaces.map((space, index) => [space.id, index]));
  const nowhere = spaces.length;
  const edges: Edge[] = [];
  const oneSided: Opening[] = [];
  const sameSpace: Opening[] = [];
  const place = (id: string | null) => (id === null ? nowhere : (indexOf.get(id) ?? nowhere));
  for (const opening of Object.values(project.openings)) {
    const [from, to] = [place(opening.fromSpaceId), place(opening.toSpaceId)];
    if (from === nowhere || to === nowhere) oneSided.push(opening);
    if (from === to) {
      if (from !== nowhere) sameSpace.push(opening);
      continue;
    }
    const decision = decisions.get(opening.id);
    edges.push({
      opening,
      decision,
      simulated: decision && standsAt(project, opening, decision, hoursOf(opening)),
      from,
      to,
      bothWays: decision?.slots[directionSlot] === 'both',
    });
  }
  return {
    project,
    spaces,
    indexOf,
    nowhere,
    edges,
    ...neighbors(spaces.length + 1, edges),
    outside: spaces.flatMap((space, index) => (endsTheWay(space) ? [index] : [])),
    oneSided,
    sameSpace,
  };
}
const directionSlot = slotOf('exitDirection');

function neighbors(nodes: number, edges: readonly Edge[]): { first: Int32Array; around: Int32Array } {
  const first = new Int32Array(nodes + 1);
  for (const { from, to } of edges) {
    first[from + 1] = (first[from + 1] as number) + 1;
    first[to + 1] = (first[to + 1] as number) + 1;
  }
  for (let node = 0; node < nodes; node++)
    first[node + 1] = (first[node + 1] as number) + (first[node] as number);
  const next = first.slice();
  const around = new Int32Array(edges.length * 2);
  edges.forEach(({ from, to }, index) => {
    for (const node of [from, to]) {
      around[next[node] as number] = index;
      next[node] = (next[node] as number) + 1;
    }
  });
  return { first, around };
}

export function factOf<K extends FactKey>(edge: Pick<Edge, 'decision'>, key: K): FactValue<K> | undefined {
  return edge.decision && valueIn(edge.decision.slots, key);
}

/** A key lock on the egress side that a sign orders to stand open while people are in. */
export function isKeyedWhileEmpty(edge: Edge | undefined): boolean {
  const { simulated } = edge ?? {};
  return simulated?.setting.openWhileOccupied === true && simulated.arrangement.release === 'keyInside';
}

const notComputed: readonly Space['kind'][] = ['stair', 'elevator'];
/** Whether loads and exits of such a space are worked out. */
export const isComputed = (space: Space): boolean => !notComputed.includes(space.kind) && !endsTheWay(space);

const alwaysOccupied: readonly Space['kind'][] = ['stair', 'corridor', 'lobby'];

/**
 * People can be in it; where nobody stated a load they can. A stair, a corridor or a yard is empty by its load and full
 * in a fire, and so is every space that others leave through, as a vestibule is.
 */
export function isOccupied(plan: Plan, index: number): boolean {
  const space = plan.spaces[index];
  if (!space || endsTheWay(space)) return false;
  const people = peopleIn(space, plan.project.basis);
  if (space.kind === 'elevator') return (people ?? 0) > 0;
  return (
    people !== 0 ||
    alwaysOccupied.includes(space.kind) ||
    space.kind === 'outside' ||
    edgesAt(plan, index).some((at) => leadsHere(plan, at, index))
  );
}

function leadsHere(plan: Plan, at: number, index: number): boolean {
  const edge = plan.edges[at];
  return edge !== undefined && edge.from === index && !noWayOut.includes(factOf(edge, 'egressRole'));
}
const noWayOut: readonly (FactValue<'egressRole'> | undefined)[] = [
  'noOccupiedSpace',
  'sealedOff',
  'vehicleDoor',
];

export function edgesAt(plan: Plan, node: number): readonly number[] {
  return [...plan.around.subarray(plan.first[node], plan.first[node + 1])];
}
