import type { Edit } from '../commands/command.ts';
import { type FloorPlan, type Pin, pixelsBetween, type Spot } from '../model/floorPlan.ts';
import { compareMarks, openingsInOrder, type Opening, type Project, type Space } from '../model/project.ts';
import { planOfFloor } from './floorPlans.ts';

/**
 * What the pins on a plan say of the two sides of a door: the spaces nearest to it. It is offered and taken with one
 * tap, never stored by itself: a pin does not see walls.
 */
export interface SidesByPlan {
  readonly says: string;
  /** The likely one first. */
  readonly choices: readonly SideChoice[];
}
export interface SideChoice {
  readonly label: string;
  readonly edits: readonly Edit[];
}

/** Farther than this share of the longer side of a drawing nothing is a neighbor. Common practice, no source. */
const farthestShare = 0.25;
/** A space with this many doors on a plan is as near as the nearest of them: a corridor has no one middle. */
const doorsOfACorridor = 2;

interface Near {
  readonly space: Space;
  readonly px: number;
  readonly doors: number;
}

/** Undefined where both sides are stated, the door is not on the plan of its floor, or no space is near. */
export function sidesByPlan(project: Project, opening: Opening): SidesByPlan | undefined {
  const { fromSpaceId, toSpaceId } = opening;
  const plan = opening.floorId === null ? undefined : planOfFloor(project, opening.floorId);
  const pin = Object.hasOwn(project.pins, opening.id) ? project.pins[opening.id] : undefined;
  if (!plan || pin?.planId !== plan.id || (fromSpaceId !== null && toSpaceId !== null)) return undefined;
  const near = spacesNear(project, plan, opening, pin);
  const stated = fromSpaceId ?? toSpaceId;
  if (stated !== null) {
    const [other] = near.filter(({ space }) => space.id !== stated);
    if (!other) return undefined;
    const side = fromSpaceId === null ? secure : egress;
    return { says: oneSide(other.space), choices: [choice(opening, [[side, other.space]])] };
  }
  const [first, second] = near;
  if (!first) return undefined;
  if (!second) {
    const sides = [secure, egress].map((side) => choice(opening, [[side, first.space]]));
    return { says: oneSide(first.space), choices: first.doors === 0 ? sides.toReversed() : sides };
  }
  const [outer, inner] = isOuter(second, first) ? [second, first] : [first, second];
  const pair = (from: Near, to: Near) =>
    choice(opening, [
      [secure, from.space],
      [egress, to.space],
    ]);
  return {
    says: `By the pins on the plan, this door is between ${first.space.name} and ${second.space.name}.`,
    choices: [pair(outer, inner), pair(inner, outer)],
  };
}

/** Doors of a plan that wait for a side the pins can tell, by mark. */
export function sidesOnPlan(
  project: Project,
  plan: FloorPlan,
): readonly { readonly opening: Opening; readonly sides: SidesByPlan }[] {
  return openingsInOrder(project)
    .filter(({ floorId }) => floorId === plan.floorId)
    .flatMap((opening) => {
      const sides = sidesByPlan(project, opening);
      return sides ? [{ opening, sides }] : [];
    });
}

const secure = { field: 'fromSpaceId', says: 'Secure side' } as const;
const egress = { field: 'toSpaceId', says: 'Egress side' } as const;
type Side = typeof secure | typeof egress;

function choice({ id }: Opening, sides: readonly (readonly [Side, Space])[]): SideChoice {
  const [only] = sides;
  return {
    label:
      sides.length === 1 && only
        ? `${only[0].says}: ${only[1].name}`
        : sides.map(([, { name }]) => name).join(' → '),
    edits: sides.map(([{ field }, space]) => ({ kind: 'setOpening', id, field, value: space.id })),
  };
}

function oneSide({ name }: Space): string {
  return `By the pins on the plan, ${name} is on one side of this door.`;
}

/** Spaces that are pinned, and those that doors of the same plan name as a side, the nearest first. */
function spacesNear(project: Project, plan: FloorPlan, opening: Opening, at: Pin): readonly Near[] {
  const doors = doorSpots(project, plan, opening.id);
  const farthest = farthestShare * Math.max(plan.widthPx, plan.heightPx);
  return Object.values(project.spaces)
    .filter(({ floorId }) => floorId === null || floorId === plan.floorId)
    .flatMap((space): readonly Near[] => {
      const own = Object.hasOwn(project.pins, space.id) ? project.pins[space.id] : undefined;
      const along = doors.get(space.id) ?? [];
      const spots = [
        ...(own?.planId === plan.id ? [own] : []),
        ...(along.length >= doorsOfACorridor ? along : []),
      ];
      const px = Math.min(...spots.map((spot) => pixelsBetween(plan, at, spot)));
      return px <= farthest ? [{ space, px, doors: along.length }] : [];
    })
    .toSorted((a, b) => a.px - b.px || b.doors - a.doors || compareMarks(a.space.name, b.space.name));
}

function doorSpots(project: Project, plan: FloorPlan, except: string): ReadonlyMap<string, readonly Spot[]> {
  const spots = new Map<string, Spot[]>();
  for (const pin of Object.values(project.pins)) {
    const door = Object.hasOwn(project.openings, pin.id) ? project.openings[pin.id] : undefined;
    if (!door || door.id === except || pin.planId !== plan.id) continue;
    for (const side of new Set([door.fromSpaceId, door.toSpaceId]))
      if (side !== null) spots.set(side, [...(spots.get(side) ?? []), pin]);
  }
  return spots;
}

/** From the street inward: a credential is read on the side that comes first. */
const inward: readonly Space['kind'][] = [
  'outside',
  'court',
  'roof',
  'stair',
  'elevator',
  'lobby',
  'corridor',
];

/** Whether a credential to the other is read here: it is nearer to the street, or more doors open off it. */
function isOuter(one: Near, other: Near): boolean {
  const place = ({ space: { kind } }: Near) => (inward.includes(kind) ? inward.indexOf(kind) : inward.length);
  return place(one) === place(other) ? one.doors > other.doors : place(one) < place(other);
}
