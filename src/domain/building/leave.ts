import { FREE, NOT_SAID, type Passages, SHUT } from './passage.ts';
import { isOccupied, type Plan } from './plan.ts';

/** How every space gets out in one condition. */
export interface Leaving {
  /** Best grade of a way to the outside; `SHUT` where there is none. Index `nowhere` is the place not stated. */
  readonly grade: Uint8Array;
  /** Edge to take first on the shortest such way, −1 at the outside or where there is none. */
  readonly by: Int32Array;
}

/** Passes from FREE upward: a way with a delay is taken only where no free way is, and so on. */
export function leavingIn(plan: Plan, { out, into }: Passages): Leaving {
  const nodes = plan.spaces.length + 1;
  const grade = new Uint8Array(nodes).fill(SHUT);
  const by = new Int32Array(nodes).fill(-1);
  for (let allowed = FREE; allowed <= NOT_SAID; allowed++) {
    const seen = new Uint8Array(nodes);
    const step = new Int32Array(nodes).fill(-1);
    const queue: number[] = [...plan.outside];
    // Where an opening leads nobody stated; perhaps outside.
    if (allowed === NOT_SAID) queue.push(plan.nowhere);
    for (const node of queue) seen[node] = 1;
    for (let head = 0; head < queue.length; head++) {
      const node = queue[head] as number;
      for (let at = plan.first[node] as number; at < (plan.first[node + 1] as number); at++) {
        const index = plan.around[at] as number;
        const edge = plan.edges[index];
        if (!edge) continue;
        // Backward: who stands on the far side comes here.
        const [back, way] = edge.from === node ? [edge.to, out] : [edge.from, into];
        // The place not stated is no room that people walk through.
        // An elevator is no part of a way out (IBC 1003.7, read in its 2018 text): nobody comes through one.
        if (seen[back] || back === plan.nowhere || isElevator(plan, node) || (way[index] as number) > allowed)
          continue;
        seen[back] = 1;
        step[back] = index;
        queue.push(back);
      }
    }
    for (const node of queue) {
      if (grade[node] !== SHUT) continue;
      grade[node] = allowed;
      by[node] = step[node] as number;
    }
  }
  return { grade, by };
}

/** The way with the fewest shut openings, and among those the shortest. */
export interface ShutWay {
  readonly edges: readonly number[];
  readonly shut: readonly number[];
}

/**
 * For spaces that cannot leave: what stands in the way. One walk from the outside for all of them, opening what is
 * shut only in the direction people leave.
 */
export function shutWays(plan: Plan, { out, into }: Passages): (space: number) => ShutWay | undefined {
  const nodes = plan.spaces.length + 1;
  const cost = new Int32Array(nodes).fill(-1);
  const hops = new Int32Array(nodes);
  const by = new Int32Array(nodes).fill(-1);
  const passes = (grade: number | undefined) => grade !== undefined && grade < NOT_SAID;
  let layer: number[] = [...plan.outside];
  for (const node of layer) cost[node] = 0;
  for (let price = 0; layer.length > 0; price++) {
    const beyond: number[] = [];
    layer.sort((a, b) => (hops[a] as number) - (hops[b] as number));
    for (let head = 0; head < layer.length; head++) {
      const node = layer[head] as number;
      if (cost[node] !== price) continue;
      for (let at = plan.first[node] as number; at < (plan.first[node + 1] as number); at++) {
        const index = plan.around[at] as number;
        const edge = plan.edges[index];
        if (!edge) continue;
        const leaves = edge.from === node;
        const back = leaves ? edge.to : edge.from;
        if (back === plan.nowhere || isElevator(plan, node)) continue;
        const open = passes(leaves ? out[index] : into[index]);
        if (!open && !leaves && !edge.bothWays) continue;
        const known = cost[back] as number;
        const next = open ? price : price + 1;
        if (known !== -1 && known <= next) continue;
        cost[back] = next;
        hops[back] = (hops[node] as number) + 1;
        by[back] = index;
        (open ? layer : beyond).push(back);
      }
    }
    layer = beyond;
  }
  return (space) => {
    if (cost[space] === -1) return undefined;
    const edges: number[] = [];
    let node = space;
    while (by[node] !== -1 && edges.length <= nodes) {
      const index = by[node] as number;
      edges.push(index);
      node = otherEnd(plan, index, node);
    }
    let here = space;
    const shut = edges.filter((index) => {
      const edge = plan.edges[index];
      const open = passes(edge?.to === here ? out[index] : into[index]);
      here = otherEnd(plan, index, here);
      return !open;
    });
    return { edges, shut };
  };
}

function isElevator({ spaces }: Plan, node: number): boolean {
  return spaces[node]?.kind === 'elevator';
}

export function otherEnd(plan: Plan, index: number, node: number): number {
  const edge = plan.edges[index];
  if (!edge) return node;
  return edge.from === node ? edge.to : edge.from;
}

/** The shortest way out that `leavingIn` found, as edges. */
export function wayOut(plan: Plan, leaving: Leaving, space: number): readonly number[] {
  const edges: number[] = [];
  let node = space;
  for (let at = leaving.by[node] as number; at !== -1; at = leaving.by[node] as number) {
    edges.push(at);
    node = otherEnd(plan, at, node);
    if (edges.length > plan.spaces.length) break;
  }
  return edges;
}

export function occupiedSpaces(plan: Plan): readonly number[] {
  return plan.spaces.flatMap((_space, index) => (isOccupied(plan, index) ? [index] : []));
}
