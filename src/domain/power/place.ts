import type { Closet } from '../model/power.ts';
import { compareMarks, type Project } from '../model/project.ts';
import type { Demand } from './demand.ts';
import type { PlanDistances } from './planDistance.ts';

/** Slack at the door and at the panel, counted in drop and takeoff. Common practice, no source. */
export const slackFt = 3 + 10;

/** Where the length of a run comes from: the best of what is there. */
export type LengthFrom = 'typed' | 'surveyed' | 'pins' | 'plan' | 'unknown';
export const lengthFromWords: Readonly<Record<LengthFrom, string>> = {
  typed: 'typed',
  surveyed: 'surveyed',
  pins: 'measured on the floor plan',
  plan: 'estimated from the plan',
  unknown: 'not known',
};

/** Where an opening is fed from. */
export interface Placing {
  /** Its closet; null: none is said, or the one that was said is gone. */
  readonly closetId: string | null;
  readonly supplyId: string | null;
  /** What was said and is no longer there. */
  readonly goneClosetId: string | null;
  readonly goneSupplyId: string | null;
  /** One way, without slack; null where nobody knows. */
  readonly feet: number | null;
  readonly from: LengthFrom;
}

function own<T>(record: Readonly<Record<string, T>>, key: string | undefined): T | undefined {
  return key !== undefined && Object.hasOwn(record, key) ? record[key] : undefined;
}

/** What the project says of one opening’s feed, with the length of its run. */
export function placingOf(project: Project, demand: Demand, distances: PlanDistances): Placing {
  const run = own(project.runs, demand.id);
  const supply = own(project.supplies, run?.supplyId?.value);
  const saidCloset = run?.closetId?.value ?? supply?.closetId ?? undefined;
  const closet = own(project.closets, saidCloset);
  const typed = run?.lengthFt?.value;
  const planned = closet && distances.feet(closet, demand);
  const isPinned = closet !== undefined && distances.pinned(closet, demand) !== undefined;
  const [feet, from]: readonly [number | null, LengthFrom] =
    typed !== undefined
      ? [typed, 'typed']
      : demand.surveyedFt !== null
        ? [demand.surveyedFt, 'surveyed']
        : planned !== undefined
          ? [planned, isPinned ? 'pins' : 'plan']
          : [null, 'unknown'];
  return {
    closetId: closet?.id ?? null,
    supplyId: supply?.id ?? null,
    goneClosetId: saidCloset !== undefined && !closet ? saidCloset : null,
    goneSupplyId: run?.supplyId && !supply ? run.supplyId.value : null,
    feet,
    from,
  };
}

/**
 * The closet nearest to an opening: by the plan where it joins the two, then on the same floor, then the fewest floors
 * away. Undefined where no closet is entered.
 */
export function nearestCloset(
  project: Project,
  demand: Demand,
  closets: readonly Closet[],
  distances: PlanDistances,
): Closet | undefined {
  const level = (id: string | null) => (id === null ? undefined : own(project.floors, id)?.level);
  const here = level(demand.floorId);
  let best: { readonly closet: Closet; readonly floors: number; readonly feet: number } | undefined;
  for (const closet of closets) {
    const there = level(closet.floorId);
    const floors = here === undefined || there === undefined ? 99 : Math.abs(here - there);
    // A closet on another floor is reached by a riser: the floor goes before a short way through a stair.
    if (best && floors > best.floors) continue;
    const feet = distances.feet(closet, demand) ?? Number.POSITIVE_INFINITY;
    if (!best || floors < best.floors || feet < best.feet) best = { closet, floors, feet };
  }
  return best?.closet;
}

export function closetsInOrder(project: Project): readonly Closet[] {
  const level = ({ floorId }: Closet) =>
    floorId === null
      ? Number.POSITIVE_INFINITY
      : (own(project.floors, floorId)?.level ?? Number.POSITIVE_INFINITY);
  return Object.values(project.closets).toSorted((a, b) => {
    const [first, second] = [level(a), level(b)];
    return first === second ? compareMarks(a.name, b.name) : first - second;
  });
}
