import type { Edit } from '../commands/command.ts';
import { type FloorPlan, isFarEnough, type Spot } from '../model/floorPlan.ts';
import { compareMarks, type Floor, type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { ceilingDropFt, pathFactor, planDistances } from '../power/planDistance.ts';
import { closetsInOrder } from '../power/place.ts';
import { parseFeet } from '../units/area.ts';
import { counted } from '../text/counted.ts';

/** Floor plans: which drawing belongs to a floor, what is pinned on it, and what a tap on it means. */

/** The drawing of a floor; of several the one that came last. */
export function planOfFloor({ plans }: Pick<Project, 'plans'>, floorId: string): FloorPlan | undefined {
  return Object.values(plans)
    .filter((plan) => plan.floorId === floorId)
    .toSorted((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : a.id < b.id ? 1 : -1))[0];
}

export interface Pinned {
  readonly id: string;
  readonly is: 'opening' | 'closet' | 'space';
  readonly name: string;
  readonly spot: Spot;
}
const kinds: readonly Pinned['is'][] = ['opening', 'closet', 'space'];

/** What stands on a plan, openings by mark, then closets and spaces; a pin of something that is gone is passed over. */
export function pinnedOn(project: Project, planId: string): readonly Pinned[] {
  return Object.values(project.pins)
    .filter((pin) => pin.planId === planId)
    .flatMap(({ id, x, y }): readonly Pinned[] => {
      const thing = toPin(project, id);
      return thing ? [{ ...thing, spot: { x, y } }] : [];
    })
    .toSorted((a, b) => kinds.indexOf(a.is) - kinds.indexOf(b.is) || compareMarks(a.name, b.name));
}

export type ToPin = Omit<Pinned, 'spot'>;
const own = <T>(record: Readonly<Record<string, T>>, id: string): T | undefined =>
  Object.hasOwn(record, id) ? record[id] : undefined;

function toPin(project: Project, id: string): ToPin | undefined {
  const opening = own(project.openings, id);
  if (opening) return { id, is: 'opening', name: opening.mark };
  const closet = own(project.closets, id);
  if (closet) return { id, is: 'closet', name: closet.name };
  const space = own(project.spaces, id);
  return space && { id, is: 'space', name: space.name };
}

/** What may stand on the plan of a floor and does not yet: what is on the floor, then what is on none. */
export function notPinned(project: Project, plan: FloorPlan): readonly ToPin[] {
  const here = (floorId: string | null) => floorId === plan.floorId || floorId === null;
  const isFree = (id: string) => own(project.plans, own(project.pins, id)?.planId ?? '') === undefined;
  const openings = openingsInOrder(project).filter(({ id, floorId }) => here(floorId) && isFree(id));
  const closets = closetsInOrder(project).filter(({ id, floorId }) => here(floorId) && isFree(id));
  const spaces = Object.values(project.spaces)
    .filter(({ id, floorId }) => here(floorId) && isFree(id))
    .toSorted((a, b) => compareMarks(a.name, b.name));
  return [...openings, ...closets, ...spaces].flatMap(({ id }) => toPin(project, id) ?? []);
}

interface Picture {
  readonly sha256: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: number;
}
interface Hand {
  readonly id: string;
  readonly at: string;
  readonly by: string;
}

export function newPlan(floor: Floor, name: string, picture: Picture, { id, at, by }: Hand): Edit {
  const { sha256, widthPx, heightPx, bytes } = picture;
  const value = {
    id,
    floorId: floor.id,
    name: name.slice(0, 120),
    sha256,
    widthPx,
    heightPx,
    bytes,
    scale: null,
    at,
    by,
  };
  return { kind: 'putPlan', id, value };
}

/** A plan goes with its pins; Undo brings both back. */
export function withoutPlan(project: Project, plan: FloorPlan): readonly Edit[] {
  const pins = Object.values(project.pins).filter(({ planId }) => planId === plan.id);
  return [
    ...pins.map(({ id }): Edit => ({ kind: 'putPin', id, value: null })),
    { kind: 'putPlan', id: plan.id, value: null },
  ];
}

export type ReadScale =
  | { readonly ok: true; readonly edit: Edit }
  | { readonly ok: false; readonly says: string };

/** Two tapped points and what somebody typed as the length between them. */
export function scaled(plan: FloorPlan, a: Spot, b: Spot, text: string): ReadScale {
  if (!isFarEnough(a, b)) return { ok: false, says: floorPlanWords.tooClose };
  const read = parseFeet(text);
  if (!read.ok) return { ok: false, says: read.says };
  if (read.feet <= 0 || read.feet > 5000) return { ok: false, says: floorPlanWords.badLength };
  const scale = { fromX: a.x, fromY: a.y, toX: b.x, toY: b.y, lengthFt: read.feet };
  return { ok: true, edit: { kind: 'putPlan', id: plan.id, value: { ...plan, scale } } };
}

/** A pin, put or moved. The floor of what it pins is the floor of the plan. */
export function pinnedAt(
  project: Project,
  plan: FloorPlan,
  id: string,
  { x, y }: Spot,
  stamp: { readonly at: string; readonly by: string },
): readonly Edit[] {
  const share = (value: number) => Math.round(Math.min(1, Math.max(0, value)) * 1e4) / 1e4;
  const put: Edit = {
    kind: 'putPin',
    id,
    value: { id, planId: plan.id, x: share(x), y: share(y), ...stamp },
  };
  const opening: Opening | undefined = own(project.openings, id);
  if (opening && opening.floorId !== plan.floorId)
    return [put, { kind: 'setOpening', id, field: 'floorId', value: plan.floorId }];
  const closet = own(project.closets, id);
  if (closet && closet.floorId !== plan.floorId)
    return [put, { kind: 'putCloset', id, value: { ...closet, floorId: plan.floorId } }];
  const space = own(project.spaces, id);
  if (space && space.floorId !== plan.floorId)
    return [put, { kind: 'putSpace', id, value: { ...space, floorId: plan.floorId } }];
  return [put];
}

/** "24 ft between the two points." */
export function scaleInWords({ scale }: Pick<FloorPlan, 'scale'>): string {
  return scale === null
    ? 'No scale yet: nothing is measured on this plan.'
    : `Scale: ${Math.round(scale.lengthFt * 100) / 100} ft between the two points that were tapped.`;
}

/** What the pins say of the cable runs, as long as nobody types or surveys them. Undefined where they say nothing. */
export function runsInWords(project: Project, plan: FloorPlan): string | undefined {
  const pinned = pinnedOn(project, plan.id);
  const closets = pinned.flatMap(({ id }) => own(project.closets, id) ?? []);
  if (plan.scale === null || closets.length === 0) return undefined;
  const distances = planDistances(project);
  const runs = pinned.flatMap(({ id, is, name }) => {
    const opening = is === 'opening' ? own(project.openings, id) : undefined;
    if (!opening) return [];
    const said = own(project.runs, id)?.closetId?.value;
    const feet = closets
      .filter((closet) => said === undefined || closet.id === said)
      .flatMap((closet) => distances.pinned(closet, opening) ?? []);
    return feet.length === 0 ? [] : [`${name} ${Math.min(...feet)} ft`];
  });
  if (runs.length === 0) return undefined;
  return `Cable runs to the closet, assumed until surveyed or typed: ${runs.join(', ')}. ${runRule}`;
}

/** What makes a run of a distance; stated wherever such a run is shown. */
const runRule = `Pin to pin, times ${pathFactor} because cable does not run straight, and ${ceilingDropFt} ft down to the frame: common practice, no source.`;

/** "14 openings pinned, 3 not yet." */
export function pinsInWords(project: Project, plan: FloorPlan): string {
  const pinned = pinnedOn(project, plan.id).filter(({ is }) => is === 'opening').length;
  const left = notPinned(project, plan).filter(({ is }) => is === 'opening').length;
  return `${counted(pinned, 'opening')} pinned${left === 0 ? '.' : `, ${left} not yet.`}`;
}

/** How far one press of an arrow key moves the cross on a plan. */
const keyStep = 0.01;
export function spotByKey({ x, y }: Spot, key: string): Spot | undefined {
  const [alongX, alongY] =
    { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[key] ?? [];
  if (alongX === undefined || alongY === undefined) return undefined;
  const share = (value: number) => Math.min(1, Math.max(0, value));
  return { x: share(x + alongX * keyStep), y: share(y + alongY * keyStep) };
}

/** Longest side of a plan as it is kept, px: its lettering is smaller than what a photo shows. */
export const planLongestPx = 3000;

export const floorPlanWords = {
  title: 'Floor plan',
  none: 'No plan of this floor yet. Choose an image or a page of a PDF.',
  noFloors: 'No floors have been entered yet. Add them under Project.',
  choose: 'Choose an image or a PDF',
  other: 'Remove this plan',
  removed: 'The plan and its pins were removed. Undo brings them back.',
  page: 'Page of the PDF',
  takePage: 'Use this page',
  reading: 'The drawing is being read …',
  setScale: 'Set the scale',
  firstPoint: 'Tap one end of a length you know, such as a grid line or a wall with its dimension.',
  secondPoint: 'Tap its other end.',
  length: 'Length between the two points',
  lengthHelp: 'As 24 ft, 24 ft 6 in or 7.5 m.',
  keepScale: 'Keep the scale',
  tooClose: 'The two points are too close together. Take a longer length.',
  badLength: 'The length must be above 0 ft and at most 5000 ft.',
  place: 'Place on the plan',
  placing: (name: string) =>
    `Tap where ${name} is. With the keyboard: arrow keys move the cross, Enter sets it.`,
  allPlaced: 'Everything on this floor is on the plan.',
  move: (name: string) => `Move ${name}`,
  unpin: (name: string) => `Take ${name} off the plan`,
  leave: 'Leave as is',
  larger: 'Larger',
  smaller: 'Smaller',
  onPlan: 'On this plan',
  closet: 'Closet',
  space: 'Space',
  picture: (name: string) => `Plan of ${name}`,
  openPin: (mark: string, state: string) => `${mark}, ${state}: open in the walk`,
  /** From the walk to the plan, and back. */
  inBar: 'Plan',
  fromWalk: 'On the plan of this floor',
  walk: (mark: string) => `Walk ${mark}`,
  notYet: (mark: string) => `${mark} is not on this plan yet.`,
  placeNow: (mark: string) => `Place ${mark}`,
  sides: 'Sides by the plan',
  gone: 'The drawing of this floor is not on this device. Its pins and its scale are kept, and its openings are listed under “On this plan”. The drawing comes back with a project file that has it.',
} as const;
