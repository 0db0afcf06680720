import type { FactKey, FactValue } from '../model/fields.ts';
import { endsTheWay, type Opening, type Project, type Space } from '../model/project.ts';

/**
 * Who leaves through whose rooms, read from the places of the openings and what the survey says of each by itself.
 * No decision is needed, because a decision reads it.
 */
export interface Ways {
  readonly spaces: readonly Space[];
  readonly indexOf: ReadonlyMap<string, number>;
  /** For each space, the openings people leave it by, with the space they come to. */
  readonly leaving: readonly (readonly Step[])[];
}

export interface Step {
  readonly opening: Opening;
  readonly to: number;
}

export function surveyedValue<K extends FactKey>({ facts }: Opening, key: K): FactValue<K> | undefined {
  const fact = facts[key];
  return fact === undefined || fact.is === 'unknown' ? undefined : fact.value;
}

/** Roles of openings that are no way out, whoever stands before them. */
const noWayOut: readonly (FactValue<'egressRole'> | undefined)[] = [
  'noOccupiedSpace',
  'sealedOff',
  'vehicleDoor',
];

/** Openings that people do not count on as they count on a door, even where the survey gives them another role. */
const notCounted: readonly (FactValue<'doorType'> | undefined)[] = ['overhead', 'gateSlide'];

/** Whether people may count on this opening as a door they leave by. */
export function isWayOut(opening: Opening): boolean {
  return (
    !noWayOut.includes(surveyedValue(opening, 'egressRole')) &&
    !notCounted.includes(surveyedValue(opening, 'doorType'))
  );
}

export function waysOf({ spaces: all, openings }: Project): Ways {
  const spaces = Object.values(all);
  const indexOf = new Map(spaces.map((space, index) => [space.id, index]));
  const leaving: Step[][] = spaces.map(() => []);
  const add = (opening: Opening, from: number, to: number) => {
    // An elevator carries nobody out in a fire (IBC 1003.7 and NFPA 101 7.4.1, from memory).
    if (spaces[to]?.kind === 'elevator' || spaces[from]?.kind === 'elevator') return;
    leaving[from]?.push({ opening, to });
  };
  for (const opening of Object.values(openings)) {
    const secure = opening.fromSpaceId === null ? undefined : indexOf.get(opening.fromSpaceId);
    const egress = opening.toSpaceId === null ? undefined : indexOf.get(opening.toSpaceId);
    if (egress === undefined || secure === undefined || secure === egress || !isWayOut(opening)) continue;
    add(opening, egress, secure);
    if (surveyedValue(opening, 'exitDirection') === 'both') add(opening, secure, egress);
  }
  return { spaces, indexOf, leaving };
}

/** Whether somebody who starts in a space comes to a stair or outside by openings other than the given one. */
export function hasOtherExit({ spaces, leaving }: Ways, start: number, without: Opening): boolean {
  const seen = new Set([start]);
  const queue = [start];
  for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
    const space = spaces[at];
    if (space && (endsTheWay(space) || (space.kind === 'stair' && at !== start))) return true;
    for (const { opening, to } of leaving[at] ?? []) {
      if (opening.id === without.id || seen.has(to)) continue;
      seen.add(to);
      queue.push(to);
    }
  }
  return false;
}

/**
 * For each space the next space that everybody in it must pass on the way outside; −1 where there are several ways,
 * none, or none known. Immediate dominators of the ways out walked backward (Cooper, Harvey and Kennedy, "A Simple,
 * Fast Dominance Algorithm", 2001, from memory). Shortest work for plans of buildings: a few passes over all ways.
 */
export function mustPass({ spaces, leaving }: Ways): Int32Array {
  const root = spaces.length;
  const into: number[][] = [...spaces, null].map(() => []);
  leaving.forEach((steps, from) => {
    for (const { to } of steps) into[to]?.push(from);
  });
  spaces.forEach((space, index) => {
    if (endsTheWay(space)) into[root]?.push(index);
  });
  // Spaces in the order a walk from outside leaves them last, so that most are settled in the first pass.
  const order: number[] = [];
  const place = new Int32Array(root + 1).fill(-1);
  const seen = new Uint8Array(root + 1);
  const stack: { node: number; next: number }[] = [{ node: root, next: 0 }];
  seen[root] = 1;
  while (stack.length > 0) {
    const top = stack.at(-1);
    if (!top) break;
    const child = into[top.node]?.[top.next];
    if (child === undefined) {
      place[top.node] = order.length;
      order.push(top.node);
      stack.pop();
      continue;
    }
    top.next += 1;
    if (!seen[child]) {
      seen[child] = 1;
      stack.push({ node: child, next: 0 });
    }
  }
  const next = new Int32Array(root + 1).fill(-1);
  next[root] = root;
  const meet = (a: number, b: number): number => {
    let [one, other] = [a, b];
    while (one !== other) {
      while ((place[one] as number) < (place[other] as number)) one = next[one] as number;
      while ((place[other] as number) < (place[one] as number)) other = next[other] as number;
    }
    return one;
  };
  for (let changed = true; changed; ) {
    changed = false;
    for (let at = order.length - 2; at >= 0; at--) {
      const node = order[at] as number;
      const space = spaces[node];
      const exits = space && endsTheWay(space) ? [root] : (leaving[node] ?? []).map((step) => step.to);
      let found = -1;
      for (const exit of exits) {
        if (next[exit] === -1) continue;
        found = found === -1 ? exit : meet(found, exit);
      }
      if (found !== next[node]) {
        next[node] = found;
        changed = true;
      }
    }
  }
  return next.map((one) => (one === root ? -1 : one)).subarray(0, root);
}
