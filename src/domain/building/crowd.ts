import { peopleIn } from '../egress/spaceLoad.ts';
import { type Network, maximumFlow, NetworkBuilder, reachable, WIDE } from './flow.ts';
import { AFTER, type Passages } from './passage.ts';
import type { Leaving } from './leave.ts';
import type { Plan } from './plan.ts';
import type { DoorCapacity } from './width.ts';

/** People against the doors they leave by, all at once. Stairs and corridors are taken to be wide enough. */
export interface Crowd {
  readonly people: number;
  /** How many the doors pass; a door whose width nobody gave is taken to pass everybody, and listed. */
  readonly passed: number;
  /** The narrow place: doors that are full while people stand before them. Empty when everybody passes. */
  readonly narrow: readonly number[];
  readonly unknownWidth: readonly number[];
  /** What is left when one door to the outside cannot be used, the worst loss first. */
  readonly losses: readonly Loss[];
}
export interface Loss {
  readonly edge: number;
  readonly passed: number;
}

export function crowdIn(
  plan: Plan,
  { out, into }: Passages,
  leaving: Leaving,
  capacities: readonly DoorCapacity[],
): Crowd {
  const [source, sink] = [plan.spaces.length + 1, plan.spaces.length + 2];
  const builder = new NetworkBuilder(plan.spaces.length + 3);
  const isOutside = new Uint8Array(plan.spaces.length + 1);
  for (const node of plan.outside) {
    isOutside[node] = 1;
    builder.add(node, sink, WIDE);
  }
  let people = 0;
  plan.spaces.forEach((space, node) => {
    // Who cannot leave at all is a finding of its own and not one of narrow doors.
    if (isOutside[node] || (leaving.grade[node] as number) > AFTER) return;
    const inside = peopleIn(space, plan.project.basis);
    if (!inside) return;
    people += inside;
    builder.add(source, node, inside);
  });
  const doors: {
    readonly arc: number;
    readonly edge: number;
    readonly tail: number;
    readonly head: number;
  }[] = [];
  const unknownWidth: number[] = [];
  plan.edges.forEach((edge, index) => {
    if (edge.from === plan.nowhere || edge.to === plan.nowhere) return;
    const capacity = capacities[index];
    const room = capacity?.known ? capacity.people : WIDE;
    const ways = [
      [edge.to, edge.from, out],
      [edge.from, edge.to, into],
    ] as const;
    let used = false;
    for (const [tail, head, way] of ways) {
      if ((way[index] as number) > AFTER || isOutside[tail]) continue;
      doors.push({ arc: builder.add(tail, head, room), edge: index, tail, head });
      used = true;
    }
    if (used && !capacity?.known) unknownWidth.push(index);
  });
  const network = builder.build();
  const passed = maximumFlow(network, source, sink);
  const narrow = new Set<number>();
  if (passed < people) {
    const side = reachable(network, source);
    for (const door of doors) if (side[door.tail] && !side[door.head]) narrow.add(door.edge);
  }
  const losses: Loss[] = [];
  for (const door of doors) {
    if (!isOutside[door.head]) continue;
    losses.push({ edge: door.edge, passed: passedWithout(network, door, sink, passed) });
  }
  losses.sort((a, b) => a.passed - b.passed || a.edge - b.edge);
  return { people, passed, narrow: [...narrow], unknownWidth, losses };
}

/**
 * The flow without one door, from the flow with it: what went through it looks for another way from its own side,
 * also by pushing others aside. What finds none is lost. No second flow of the whole building is needed.
 */
function passedWithout(
  network: Network,
  door: { readonly arc: number; readonly tail: number },
  sink: number,
  passed: number,
): number {
  const room = network.room.slice();
  const sent = room[door.arc ^ 1] as number;
  if (sent === 0) return passed;
  room[door.arc] = 0;
  room[door.arc ^ 1] = 0;
  return passed - sent + maximumFlow({ ...network, room }, door.tail, sink, sent);
}
