import { endsTheWay, securityLevels } from '../model/project.ts';
import type { ConditionId } from '../simulate/conditions.ts';
import { standing } from '../simulate/simulate.ts';
import { type Network, maximumFlow, NetworkBuilder, reachable, WIDE } from './flow.ts';
import { AFTER, FREE, type Passages } from './passage.ts';
import { otherEnd } from './leave.ts';
import type { Plan } from './plan.ts';

/** How much a space is to be protected: its place among the levels, −1 where nobody stated one. */
export function rankOf(plan: Plan, space: number): number {
  const level = plan.spaces[space]?.securityLevel;
  return level === null || level === undefined ? -1 : securityLevels.indexOf(level);
}

/** Where anybody may stand: public spaces, and the outside unless it is fenced off by a level of its own. */
export function publicSpaces(plan: Plan): readonly number[] {
  return plan.spaces.flatMap((space, index) => {
    const rank = rankOf(plan, index);
    return rank === 0 || (endsTheWay(space) && rank <= 0) ? [index] : [];
  });
}

/** What a person without a credential reaches from where anybody may stand. */
export interface Reached {
  /** Edge by which each space was first reached, −1 where not reached or where people start. */
  readonly by: Int32Array;
  readonly reached: Uint8Array;
}

/**
 * Past an unlocked lock, or against a door that opens freely from this side. What nobody decided is not counted as
 * open; it is listed apart.
 */
export function reachedWithoutCredential(plan: Plan, { out, into }: Passages): Reached {
  const by = new Int32Array(plan.spaces.length + 1).fill(-1);
  const reached = new Uint8Array(plan.spaces.length + 1);
  const queue = [...publicSpaces(plan)];
  for (const node of queue) reached[node] = 1;
  for (let head = 0; head < queue.length; head++) {
    const node = queue[head] as number;
    for (let at = plan.first[node] as number; at < (plan.first[node + 1] as number); at++) {
      const index = plan.around[at] as number;
      const edge = plan.edges[index];
      if (!edge) continue;
      const open = edge.from === node ? into[index] === FREE : (out[index] as number) <= AFTER;
      const next = otherEnd(plan, index, node);
      if (!open || reached[next] || next === plan.nowhere) continue;
      reached[next] = 1;
      by[next] = index;
      queue.push(next);
    }
  }
  return { by, reached };
}

/** Edges from where anybody stands to the space, in the order they are walked. */
export function wayIn(plan: Plan, { by }: Reached, space: number): readonly number[] {
  const edges: number[] = [];
  let node = space;
  for (let at = by[node] as number; at !== -1; at = by[node] as number) {
    edges.push(at);
    node = otherEnd(plan, at, node);
    if (edges.length > plan.edges.length) break;
  }
  return edges.toReversed();
}

/**
 * Battery hours after which the way stands open: the last battery on it to die decides. Zero where no battery
 * delays it, null where one does and nobody stated its hours.
 */
export function hoursUntilOpen(plan: Plan, way: readonly number[], condition: ConditionId): number | null {
  if (condition !== 'batterySpent') return 0;
  let hours = 0;
  for (const index of way) {
    const simulated = plan.edges[index]?.simulated;
    if (!simulated) continue;
    const waits =
      standing(simulated.outcomes, 'mainsLost').entry === 'locked' &&
      standing(simulated.outcomes, 'batterySpent').entry === 'unlocked';
    if (!waits) continue;
    if (simulated.arrangement.batteryHours === null) return null;
    hours = Math.max(hours, simulated.arrangement.batteryHours);
  }
  return hours;
}

/** The fewest openings whose locking closes a space off from the public. */
export type Closing =
  | { readonly possible: true; readonly edges: readonly number[] }
  /** Every way in leads somewhere through a door by which people leave: a lock there would trap them. */
  | { readonly possible: false };

/**
 * Minimum cut. An opening counts one; the way people leave through it may not be cut, so it counts more than all.
 * The network runs backward, from the space to where anybody may stand: few spaces lie behind a door, many before
 * it, and of two equally small cuts the one nearer to the space is told. It is built once for a condition.
 */
export function closings(plan: Plan, { out, into }: Passages): (space: number) => Closing {
  const sink = plan.spaces.length + 1;
  const builder = new NetworkBuilder(plan.spaces.length + 2);
  for (const node of publicSpaces(plan)) builder.add(node, sink, WIDE);
  const edgeOfArc = new Map<number, number>();
  plan.edges.forEach((edge, index) => {
    if (edge.from === plan.nowhere || edge.to === plan.nowhere) return;
    if ((out[index] as number) <= AFTER) builder.add(edge.from, edge.to, WIDE);
    if (into[index] === FREE) {
      edgeOfArc.set(builder.add(edge.to, edge.from, edge.bothWays ? WIDE : 1), index);
    }
  });
  const network = builder.build();
  const fresh = network.room.slice();
  return (space) => {
    network.room.set(fresh);
    if (maximumFlow(network, space, sink) >= WIDE) return { possible: false };
    return { possible: true, edges: leavingSide(network, space, edgeOfArc) };
  };
}

/** Edges from what the space still reaches to what it does not: the cut. */
function leavingSide(
  network: Network,
  space: number,
  edgeOfArc: ReadonlyMap<number, number>,
): readonly number[] {
  const { head, first, arcs } = network;
  const side = reachable(network, space);
  const edges: number[] = [];
  side.forEach((inside, node) => {
    if (!inside) return;
    for (let place = first[node] as number; place < (first[node + 1] as number); place++) {
      const arc = arcs[place] as number;
      const index = edgeOfArc.get(arc);
      if (index !== undefined && !side[head[arc] as number]) edges.push(index);
    }
  });
  return edges;
}
