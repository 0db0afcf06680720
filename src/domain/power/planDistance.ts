import type { Closet } from '../model/power.ts';
import { feetBetween, type FloorPlan } from '../model/floorPlan.ts';
import type { Project, Space } from '../model/project.ts';

/** A room of unknown area counts as one of 30 ft by 30 ft; a story is 14 ft high. Common practice, no source. */
const usualSideFt = 30;
const storyFt = 14;
/** Down from the ceiling to the frame. Common practice, no source. */
export const ceilingDropFt = 10;
/** Cable does not run as the crow flies. Common practice, no source. */
export const pathFactor = 1.25;

type Links = ReadonlyMap<string, readonly string[]>;

/** Spaces joined by an opening, both ways. */
function linksOf(project: Project): Links {
  const links = new Map<string, string[]>();
  const join = (from: string, to: string) => {
    const list = links.get(from);
    if (list) list.push(to);
    else links.set(from, [to]);
  };
  for (const { fromSpaceId, toSpaceId } of Object.values(project.openings)) {
    if (fromSpaceId === null || toSpaceId === null || fromSpaceId === toSpaceId) continue;
    join(fromSpaceId, toSpaceId);
    join(toSpaceId, fromSpaceId);
  }
  return links;
}

function sideFt(space: Space | undefined): number {
  if (space?.kind === 'stair' || space?.kind === 'elevator') return storyFt;
  const area = space?.areaFt2;
  return typeof area === 'number' && area > 0 ? Math.sqrt(area) : usualSideFt;
}

/** Feet from the closet’s space to every space, room by room, before the path factor. */
function distancesFrom(start: string, links: Links, project: Project): ReadonlyMap<string, number> {
  const found = new Map<string, number>([[start, 0]]);
  // Rooms are few and alike in size, so going on from the oldest and correcting beats a sorted queue.
  const queue = [start];
  for (let at = 0; at < queue.length; at++) {
    const here = queue[at] as string;
    const so = (found.get(here) ?? 0) + sideFt(project.spaces[here]);
    for (const next of links.get(here) ?? []) {
      if (so >= (found.get(next) ?? Number.POSITIVE_INFINITY)) continue;
      found.set(next, so);
      queue.push(next);
    }
  }
  return found;
}

interface Placed {
  readonly id: string;
  readonly fromSpaceId: string | null;
  readonly toSpaceId: string | null;
}

/** Estimates of runs from what the plan shows; each closet is measured once, when it is first asked for. */
export interface PlanDistances {
  /** Whole feet one way, or undefined where the plan does not join the two. */
  readonly feet: (closet: Closet, opening: Placed) => number | undefined;
  /** The same where both are pinned on one floor plan with a scale: measured there, so it goes before rooms and areas. */
  readonly pinned: (closet: Closet, opening: Placed) => number | undefined;
}

export function planDistances(project: Project): PlanDistances {
  let links: Links | undefined;
  const measured = new Map<string, ReadonlyMap<string, number>>();
  const from = (spaceId: string) => {
    let found = measured.get(spaceId);
    if (!found) {
      links ??= linksOf(project);
      found = distancesFrom(spaceId, links, project);
      measured.set(spaceId, found);
    }
    return found;
  };
  const pinned: PlanDistances['pinned'] = (closet, opening) => {
    const feet = feetBetweenPins(project, closet.id, opening.id);
    return feet === undefined ? undefined : runOf(feet);
  };
  return {
    pinned,
    feet: (closet, opening) => {
      const measured = pinned(closet, opening);
      if (measured !== undefined || closet.spaceId === null) return measured;
      const known = from(closet.spaceId);
      const ways = [opening.fromSpaceId, opening.toSpaceId].flatMap((id) =>
        id === null ? [] : (known.get(id) ?? []),
      );
      return ways.length === 0 ? undefined : runOf(Math.min(...ways));
    },
  };
}

/** Whole feet of cable for a distance as the crow flies: its way along the building, and down to the frame. */
const runOf = (feet: number) => Math.round(feet * pathFactor + ceilingDropFt);

/** Between two pins of one plan, as the crow flies; undefined where they stand on none, or it has no scale. */
function feetBetweenPins({ pins, plans }: Project, a: string, b: string): number | undefined {
  const [first, second] = [pin(pins, a), pin(pins, b)];
  if (!first || !second || first.planId !== second.planId || !Object.hasOwn(plans, first.planId))
    return undefined;
  return feetBetween(plans[first.planId] as FloorPlan, first, second);
}

const pin = (pins: Project['pins'], id: string) => (Object.hasOwn(pins, id) ? pins[id] : undefined);
