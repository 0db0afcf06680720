import { capacityOf } from '../egress/capacity.ts';
import { figure, peopleInWords, type Reason, resting, surveyed } from '../egress/reason.ts';
import { type FactValues, fieldInfo } from '../model/fields.ts';
import { compareMarks, endsTheWay, type Opening } from '../model/project.ts';
import { qty } from '../units/quantity.ts';
import type { BuildingAnswer } from './building.ts';
import { doubleFaultIds } from '../simulate/conditions.ts';
import { NOT_SAID, SHUT, STAFF } from './passage.ts';
import { type Edge, factOf, isKeyedWhileEmpty, type Plan } from './plan.ts';
import type { DoorCapacity } from './width.ts';

/** Whether a door is one of the ways out of a space; `perhaps` waits on something the survey leaves out. */
export type Standing = 'counts' | 'perhaps' | 'no';

export interface WayOut {
  readonly opening: Opening;
  readonly edge: Edge;
  readonly standing: Standing;
  /** Why it does not count, or what is to be known of one that does; empty when there is nothing to say. */
  readonly because: string;
  /** The space lies behind the door, so what the door's survey says of its room is said of this space. */
  readonly isBehind: boolean;
  /** Where it leads, for a person. */
  readonly leadsTo: string;
  readonly capacity: DoorCapacity;
  readonly reasons: readonly Reason[];
}

type Part = Pick<BuildingAnswer, 'plan' | 'capacities' | 'states'>;

/** Doors by which people leave a space, in the direction people leave, by mark. */
export function waysOutOf(answer: Part, node: number): readonly WayOut[] {
  const { plan } = answer;
  const ways: WayOut[] = [];
  for (let at = plan.first[node] as number; at < (plan.first[node + 1] as number); at++) {
    const index = plan.around[at] as number;
    const edge = plan.edges[index];
    const capacity = answer.capacities[index];
    if (!edge || !capacity || !isLeaving(edge, node)) continue;
    const other = edge.to === node ? edge.from : edge.to;
    const [standing, because] = standingOf(answer, edge, index, node, other);
    ways.push({
      opening: edge.opening,
      edge,
      standing,
      because,
      isBehind: edge.to === node,
      leadsTo: plan.spaces[other]?.name ?? 'a place not stated',
      capacity,
      reasons: capacityReasons(edge, capacity),
    });
  }
  return ways.toSorted((a, b) => compareMarks(a.opening.mark, b.opening.mark));
}

/** People leave from the far side of the reader; from the near side too where the survey says both ways. */
function isLeaving(edge: Edge, node: number): boolean {
  return edge.to === node || edge.bothWays;
}

/** Doors that people do not leave by as by a door: they count only under conditions of their own. */
const notDoors: readonly FactValues['doorType'][] = [
  'overhead',
  'grille',
  'revolving',
  'gateSlide',
  'turnstile',
  'turnstileFull',
  'turnstileSecurity',
];

function standingOf(
  answer: Part,
  edge: Edge,
  index: number,
  node: number,
  other: number,
): readonly [Standing, string] {
  const { plan } = answer;
  const role = factOf(edge, 'egressRole');
  if (plan.spaces[other]?.kind === 'elevator') return ['no', 'An elevator is not an exit.'];
  if (role === 'sealedOff' || role === 'noOccupiedSpace' || role === 'vehicleDoor') {
    return ['no', `Its egress role is “${fieldInfo('egressRole').options?.[role] ?? role}”.`];
  }
  const worst = worstGrade(answer, edge, index, node);
  if (worst === SHUT && isKeyedWhileEmpty(edge)) {
    return ['counts', 'It is locked by key, only while no one is inside.'];
  }
  if (worst === SHUT) return ['no', 'There is a condition in which no one can leave by it.'];
  if (other === plan.nowhere) return ['perhaps', 'Where it leads is not stated.'];
  if (role === undefined) return ['perhaps', 'Its egress role is not surveyed.'];
  const type = factOf(edge, 'doorType');
  if (type !== undefined && notDoors.includes(type)) {
    const word = fieldInfo('doorType').options?.[type] ?? type;
    return ['perhaps', `${word}: it counts only under its own conditions.`];
  }
  if (worst === NOT_SAID) return ['counts', 'Its lock is not decided yet.'];
  if (worst === STAFF) return ['counts', 'There is a condition in which staff must open it.'];
  return ['counts', ''];
}

function worstGrade(answer: Part, edge: Edge, index: number, node: number): number {
  let worst = 0;
  for (const [condition, { passages }] of answer.states) {
    // Any sensor and button can both fail; the building tells it apart (`restsOnTwo`).
    if (doubleFaultIds.includes(condition)) continue;
    const way = edge.to === node ? passages.out : passages.into;
    worst = Math.max(worst, way[index] as number);
  }
  return worst;
}

const widthFacts = ['leafWidthIn', 'leafThicknessIn', 'hinges'] as const;

function capacityReasons(edge: Edge, capacity: DoorCapacity): readonly Reason[] {
  if (!capacity.known) return [surveyed(`Not known: ${capacity.missing}.`)];
  const { clearIn, oneLeafIn, estimated, factors } = capacity;
  const both = clearIn === oneLeafIn ? '' : `; both leaves count: ${figure(clearIn)} in`;
  return [
    estimated
      ? resting(
          `About ${figure(oneLeafIn)} in clear, from ${widthFacts.map((key) => fieldInfo(key).label.toLowerCase()).join(', ')}${both}. Measure it.`,
          'Usual frame and hinge dimensions',
          'practice',
        )
      : surveyed(`${figure(oneLeafIn)} in clear, ${measuredHow(edge)}${both}.`),
    ...factors.map(({ inPerPerson, source, confidence }) =>
      resting(
        `${figure(clearIn)} in ÷ ${inPerPerson} in a person = ${peopleInWords(capacityOf(qty(clearIn, 'in'), inPerPerson))}.`,
        source,
        confidence,
      ),
    ),
  ];
}

function measuredHow(edge: Edge): string {
  const from = edge.decision?.assumed.get('clearWidthIn');
  return from === undefined ? 'measured' : `assumed: ${from}`;
}

/** Spaces whose people are counted on by others: they leave through this one. */
export function comeThrough(plan: Plan, node: number): readonly string[] {
  const names = new Set<string>();
  for (let at = plan.first[node] as number; at < (plan.first[node + 1] as number); at++) {
    const edge = plan.edges[plan.around[at] as number];
    if (!edge) continue;
    const from = edge.from === node ? edge.to : edge.bothWays ? edge.from : undefined;
    const space = from === undefined ? undefined : plan.spaces[from];
    if (space && !endsTheWay(space) && space.kind !== 'elevator') names.add(space.name);
  }
  return [...names].toSorted(compareMarks);
}
