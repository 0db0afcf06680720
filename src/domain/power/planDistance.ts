import type { Closet } from '../model/power.ts';
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
  readonly fromSpaceId: string | null;
  readonly toSpaceId: string | null;
}

/** Estimates of runs from what the plan shows; each closet is measured once, when it is first asked for. */
export interface PlanDistances {
  /** Whole feet one way, or undefined where the plan does not join the two. */
  readonly feet: (closet: Closet, opening: Placed) => number | undefined;
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
  return {
    feet: ({ spaceId }, opening) => {
      if (spaceId === null) return undefined;
      const known = from(spaceId);
      const ways = [opening.fromSpaceId, opening.toSpaceId].flatMap((id) =>
        id === null ? [] : (known.get(id) ?? []),
      );
      return ways.length === 0 ? undefined : Math.round(Math.min(...ways) * pathFactor + ceilingDropFt);
    },
  };
}
