import { type ExitsNeeded, exitsNeeded } from '../egress/exitsNeeded.ts';
import { type PanicAnswer, panicReasons } from '../egress/panicReasons.ts';
import { type Reason, surveyed } from '../egress/reason.ts';
import { loadOf, type SpaceLoad } from '../egress/spaceLoad.ts';
import { type FactValue, fieldInfo } from '../model/fields.ts';
import type { Space } from '../model/project.ts';
import { qty } from '../units/quantity.ts';
import type { BuildingAnswer } from './building.ts';
import { egressFindings } from './egressFindings.ts';
import type { BuildingFinding } from './finding.ts';
import { factOf, isComputed, type Plan } from './plan.ts';
import { contradictionsAt } from './planContradictions.ts';
import { comeThrough, type WayOut, waysOutOf } from './waysOut.ts';

type Group = FactValue<'occupancyGroup'>;

/** One space against its doors: how many people, how many ways out, whether the doors carry them. */
export interface SpaceEgress {
  readonly space: Space;
  readonly load: SpaceLoad;
  readonly group: { readonly value: Group | undefined; readonly reason: Reason };
  /** False where its own load says nothing about the ways out: a corridor carries the people of its rooms. */
  readonly judged: boolean;
  /** False while no opening joins it at all: the survey has not come there yet, which is told among its gaps. */
  readonly hasDoors: boolean;
  /** Null while load or code is not known, and where it is not judged. */
  readonly needed: ExitsNeeded | null;
  readonly ways: readonly WayOut[];
  /** Egress that count, and those that may. */
  readonly found: number;
  readonly perhaps: number;
  readonly capacity: WholeCapacity;
  readonly narrowest: { readonly mark: string; readonly clearIn: number; readonly estimated: boolean } | null;
  /** Null while group or load is not known. */
  readonly panic: PanicAnswer | null;
  /** Spaces whose people leave through this one. */
  readonly through: readonly string[];
  readonly findings: readonly BuildingFinding[];
}

/** Of the ways that count. */
export interface WholeCapacity {
  /** People the doors of known width pass; at least so many where a width is missing. */
  readonly people: number;
  /** Without the largest door; at least so many where a width is missing. */
  readonly withoutLargest: number;
  /** Doors whose width nobody knows. */
  readonly unknown: readonly string[];
}

type Part = Pick<BuildingAnswer, 'plan' | 'capacities' | 'states'>;

/** Every space in which people can be, in the order of the plan. Stairs, elevators and the public way are not computed. */
export function spaceEgress(answer: Part): readonly SpaceEgress[] {
  return answer.plan.spaces.flatMap((space, node) =>
    isComputed(space) ? [egressOf(answer, space, node)] : [],
  );
}

function egressOf(answer: Part, space: Space, node: number): SpaceEgress {
  const { plan } = answer;
  const { basis, building } = plan.project;
  const load = loadOf(space, basis);
  const ways = waysOutOf(answer, node);
  const group = groupOf(plan, node);
  const judged = space.kind !== 'corridor';
  const sprinklers = building.sprinklered;
  const needed = judged
    ? exitsNeeded(
        {
          people: load.people,
          group: group.value,
          commonPathFt: space.commonPathFt,
          sprinklered: sprinklers === undefined || sprinklers.is === 'unknown' ? undefined : sprinklers.value,
        },
        basis,
      )
    : null;
  const counted = ways.filter((way) => way.standing === 'counts');
  const egress = {
    space,
    load,
    group,
    judged,
    hasDoors: plan.first[node] !== plan.first[node + 1],
    needed,
    ways,
    found: counted.length,
    perhaps: ways.filter((way) => way.standing === 'perhaps').length,
    capacity: wholeCapacity(counted),
    narrowest: narrowestOf(counted),
    panic:
      group.value === undefined || load.people === null
        ? null
        : panicReasons(group.value, qty(load.people, 'people'), basis),
    through: comeThrough(plan, node),
  };
  return { ...egress, findings: [...contradictionsAt(plan, space), ...egressFindings(egress, basis)] };
}

/** As the doors that people leave it by say; they take it from the building where they do not say otherwise. */
function groupOf(plan: Plan, node: number): SpaceEgress['group'] {
  const said = new Map<Group, string[]>();
  for (let at = plan.first[node] as number; at < (plan.first[node + 1] as number); at++) {
    const edge = plan.edges[plan.around[at] as number];
    if (edge?.to !== node) continue;
    const group = factOf(edge, 'occupancyGroup');
    if (group !== undefined) said.set(group, [...(said.get(group) ?? []), edge.opening.mark]);
  }
  const words = (group: Group) => fieldInfo('occupancyGroup').options?.[group] ?? group;
  const [first, ...others] = [...said];
  if (first && others.length === 0) {
    return {
      value: first[0],
      reason: surveyed(
        `Group ${words(first[0])}, as ${first[1].join(', ')} ${first[1].length === 1 ? 'says' : 'say'}.`,
      ),
    };
  }
  if (first) {
    const all = [...said].map(([group, marks]) => `${words(group)} (${marks.join(', ')})`);
    return { value: undefined, reason: surveyed(`Its doors name different groups: ${all.join(', ')}.`) };
  }
  const building = plan.project.building.occupancyGroup;
  return building !== undefined && building.is !== 'unknown'
    ? { value: building.value, reason: surveyed(`Group ${words(building.value)}, as the building.`) }
    : { value: undefined, reason: surveyed('The occupancy group is not known.') };
}

function wholeCapacity(counted: readonly WayOut[]): WholeCapacity {
  const known = counted.flatMap(({ capacity }) => (capacity.known ? [capacity.people] : []));
  const people = known.reduce((sum, one) => sum + one, 0);
  const unknown = counted.flatMap(({ capacity, opening }) => (capacity.known ? [] : [opening.mark]));
  return { people, withoutLargest: people - Math.max(0, ...known), unknown };
}

function narrowestOf(counted: readonly WayOut[]): SpaceEgress['narrowest'] {
  let narrowest: SpaceEgress['narrowest'] = null;
  for (const { capacity, opening } of counted) {
    if (!capacity.known || (narrowest && narrowest.clearIn <= capacity.oneLeafIn)) continue;
    narrowest = { mark: opening.mark, clearIn: capacity.oneLeafIn, estimated: capacity.estimated };
  }
  return narrowest;
}
