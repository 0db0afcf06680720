/**
 * Maximum flow by Dinic's method over plain arrays. Arcs come in pairs, the second being the way back, so the
 * partner of arc `a` is `a ^ 1`.
 */
export interface Network {
  readonly nodes: number;
  readonly head: Int32Array;
  readonly first: Int32Array;
  readonly arcs: Int32Array;
  readonly room: Int32Array;
  /** Working space, kept because a flow is asked for thousands of times on one network. */
  readonly level: Int32Array;
  readonly next: Int32Array;
  readonly queue: Int32Array;
}

/** More than any building holds; stands for a width nobody gave and for ways that may not be closed. */
export const WIDE = 1_000_000_000;

export class NetworkBuilder {
  readonly #nodes: number;
  readonly #from: number[] = [];
  readonly #to: number[] = [];
  readonly #room: number[] = [];
  constructor(nodes: number) {
    this.#nodes = nodes;
  }

  /** Adds an arc and its way back; the number returned is that of the arc. */
  add(from: number, to: number, room: number): number {
    this.#from.push(from, to);
    this.#to.push(to, from);
    this.#room.push(room, 0);
    return this.#room.length - 2;
  }

  build(): Network {
    const count = this.#room.length;
    const first = new Int32Array(this.#nodes + 1);
    for (const node of this.#from) first[node + 1] = (first[node + 1] as number) + 1;
    for (let node = 0; node < this.#nodes; node++) {
      first[node + 1] = (first[node + 1] as number) + (first[node] as number);
    }
    const next = first.slice();
    const arcs = new Int32Array(count);
    for (let arc = 0; arc < count; arc++) {
      const node = this.#from[arc] as number;
      arcs[next[node] as number] = arc;
      next[node] = (next[node] as number) + 1;
    }
    return {
      nodes: this.#nodes,
      head: Int32Array.from(this.#to),
      first,
      arcs,
      room: Int32Array.from(this.#room),
      level: new Int32Array(this.#nodes),
      next: new Int32Array(this.#nodes),
      queue: new Int32Array(this.#nodes),
    };
  }
}

/** Sends as much as possible from source to sink and leaves the remaining room in `network.room`. */
export function maximumFlow(network: Network, source: number, sink: number, atMost = WIDE): number {
  const { nodes, head, first, arcs, room, level, next, queue } = network;
  let total = 0;

  const levels = (): boolean => {
    level.fill(-1);
    level[source] = 0;
    queue[0] = source;
    let size = 1;
    for (let at = 0; at < size; at++) {
      const node = queue[at] as number;
      for (let place = first[node] as number; place < (first[node + 1] as number); place++) {
        const arc = arcs[place] as number;
        const to = head[arc] as number;
        if ((room[arc] as number) > 0 && level[to] === -1) {
          level[to] = (level[node] as number) + 1;
          if (to === sink) return true;
          queue[size++] = to;
        }
      }
    }
    return false;
  };

  // Without recursion: a building may be a chain of thousands of rooms.
  const path: number[] = [];
  const push = (limit: number): number => {
    path.length = 0;
    let node = source;
    for (;;) {
      if (node === sink) {
        let amount = limit;
        for (const arc of path) amount = Math.min(amount, room[arc] as number);
        for (const arc of path) {
          room[arc] = (room[arc] as number) - amount;
          room[arc ^ 1] = (room[arc ^ 1] as number) + amount;
        }
        return amount;
      }
      let went = false;
      for (; (next[node] as number) < (first[node + 1] as number); next[node] = (next[node] as number) + 1) {
        const arc = arcs[next[node] as number] as number;
        const to = head[arc] as number;
        if ((room[arc] as number) > 0 && level[to] === (level[node] as number) + 1) {
          path.push(arc);
          node = to;
          went = true;
          break;
        }
      }
      if (went) continue;
      const back = path.pop();
      if (back === undefined) return 0;
      node = head[back ^ 1] as number;
      next[node] = (next[node] as number) + 1;
    }
  };

  while (total < atMost && levels()) {
    for (let node = 0; node < nodes; node++) next[node] = first[node] as number;
    for (let sent = push(atMost - total); sent > 0; sent = push(atMost - total)) {
      total += sent;
      if (total >= atMost) return total;
    }
  }
  return total;
}

/** Nodes the source still reaches: the arcs that leave this set are the narrowest place. */
export function reachable(network: Network, source: number): Uint8Array {
  const { nodes, head, first, arcs, room } = network;
  const seen = new Uint8Array(nodes);
  const queue = [source];
  seen[source] = 1;
  for (let at = 0; at < queue.length; at++) {
    const node = queue[at] as number;
    for (let place = first[node] as number; place < (first[node + 1] as number); place++) {
      const arc = arcs[place] as number;
      const to = head[arc] as number;
      if ((room[arc] as number) > 0 && !seen[to]) {
        seen[to] = 1;
        queue.push(to);
      }
    }
  }
  return seen;
}
