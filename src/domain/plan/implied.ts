import type { CodeBasis } from '../codes/basis.ts';
import { loadOf, loadsDiffer, peopleIn } from '../egress/spaceLoad.ts';
import type { PlanKey } from '../logic/planKeys.ts';
import type { FactKey, FactValue } from '../model/fields.ts';
import { compareMarks, endsTheWay, type Opening, type Project, type Space } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import type { Use } from '../model/uses.ts';
import { hasOtherExit, isWayOut, mustPass, surveyedValue, type Ways, waysOf } from './ways.ts';

/** A fact of an opening as the spaces and the other openings of its project show it. */
export interface ImpliedFact<K extends FactKey = FactKey> {
  readonly key: K;
  readonly value: FactValue<K>;
  /** Where it comes from, after "from the plan: ". */
  readonly from: string;
}

/** What the plan says of one opening, and where the survey of that opening says otherwise. */
export interface Implied {
  readonly facts: readonly ImpliedFact[];
  readonly differs: readonly PlanKey[];
  /** Equal for equal answers: what is remembered of an opening holds as long as this does. */
  readonly signature: string;
}

const nothing: Implied = { facts: [], differs: [], signature: '' };

interface Drawn {
  readonly ways: Ways;
  readonly served: readonly Served[];
  /** What the openings into each space say its occupancy group is. */
  readonly groups: readonly ReadonlyMap<Group, readonly string[]>[];
}

type Group = FactValue<'occupancyGroup'>;

/** A space with the people of all spaces that have no way out but through it. */
interface Served {
  readonly people: number;
  readonly names: readonly string[];
  /** Indexes of the other spaces that have no way out but through it, unless it is known that nobody is in them. */
  readonly behind: readonly number[];
}

interface Remembered {
  readonly openings: Project['openings'];
  readonly basis: CodeBasis;
  readonly building: Project['building'];
  readonly drawn: Drawn;
  readonly implied: WeakMap<Opening, Implied>;
}
const remembered = new WeakMap<Project['spaces'], Remembered>();

/** Drawn anew only when an edit touches what the drawing reads: most answers of a survey do not. */
function drawnOf(project: Project): Remembered {
  const { openings, spaces, basis, building } = project;
  const before = remembered.get(spaces);
  if (before?.openings === openings && before.basis === basis && before.building === building) return before;
  const holds = before && before.basis === basis && samePlan(before.openings, openings);
  const ways = holds ? before.drawn.ways : waysOf(project);
  const drawn = holds
    ? before.drawn
    : { ways, served: servedBy(ways, basis), groups: groupsOf(project, ways) };
  const implied = holds && before.building === building ? before.implied : new WeakMap<Opening, Implied>();
  const now = { openings, basis, building, drawn, implied };
  remembered.set(spaces, now);
  return now;
}

/** What the drawing reads of an opening. */
const drawnFacts = ['egressRole', 'doorType', 'exitDirection', 'occupancyGroup'] as const;

function samePlan(before: Project['openings'], after: Project['openings']): boolean {
  const ids = Object.keys(after);
  if (ids.length !== Object.keys(before).length) return false;
  return ids.every((id) => {
    const [was, is] = [before[id], after[id]];
    if (was === is) return true;
    return (
      was !== undefined &&
      is !== undefined &&
      was.mark === is.mark &&
      was.fromSpaceId === is.fromSpaceId &&
      was.toSpaceId === is.toSpaceId &&
      drawnFacts.every((key) => surveyedValue(was, key) === surveyedValue(is, key))
    );
  });
}

/** The load a way out carries includes everybody who has to pass it (IBC 1004.2, from memory). */
function servedBy(ways: Ways, basis: CodeBasis): readonly Served[] {
  const own = ways.spaces.map((space) => (endsTheWay(space) ? 0 : peopleIn(space, basis)));
  const people = own.map((count) => count ?? 0);
  const behind = own.map((): number[] => []);
  const next = mustPass(ways);
  own.forEach((count, index) => {
    if (count === 0) return;
    for (let at = next[index] as number; at >= 0; at = next[at] as number) {
      const there = ways.spaces[at];
      if (there && endsTheWay(there)) break;
      people[at] = (people[at] as number) + (count ?? 0);
      behind[at]?.push(index);
    }
  });
  return ways.spaces.map((_space, index) => ({
    people: people[index] as number,
    names: [index, ...(behind[index] ?? [])]
      .flatMap((one) => ((own[one] ?? 0) > 0 ? (ways.spaces[one]?.name ?? '') : []))
      .toSorted(compareMarks),
    behind: behind[index] ?? [],
  }));
}

function groupsOf({ openings }: Project, { spaces, indexOf }: Ways): Drawn['groups'] {
  const groups = spaces.map(() => new Map<Group, string[]>());
  for (const opening of Object.values(openings)) {
    const space = opening.toSpaceId === null ? undefined : indexOf.get(opening.toSpaceId);
    const group = surveyedValue(opening, 'occupancyGroup');
    if (space === undefined || group === undefined) continue;
    const marks = groups[space]?.get(group);
    if (marks) marks.push(opening.mark);
    else groups[space]?.set(group, [opening.mark]);
  }
  return groups;
}

/** Rooms of their own, whose doors serve the whole room; through the others people only pass. */
const rooms: readonly Space['kind'][] = ['room', 'roof', 'court'];
/** Egress that the people of other floors share: a load nobody gave stays a question there. */
const sharedRoles: readonly (FactValue<'egressRole'> | undefined)[] = [
  'exteriorExit',
  'stairEntry',
  'stairDischarge',
  'horizontalExit',
  'crossCorridor',
  'dischargeGate',
  'egressCourt',
];

/**
 * What spaces and openings imply for one opening. `building` says which facts the whole building gives; what is typed
 * at the opening itself wins over it and loses to the plan.
 */
export function impliedFor(project: Project, opening: Opening): Implied {
  if (opening.toSpaceId === null && opening.fromSpaceId === null) return nothing;
  const { drawn, implied } = drawnOf(project);
  const before = implied.get(opening);
  if (before) return before;
  const now = impliedBy(project, opening, drawn);
  implied.set(opening, now);
  return now;
}

function impliedBy(project: Project, opening: Opening, drawn: Drawn): Implied {
  const at = opening.toSpaceId === null ? undefined : drawn.ways.indexOf.get(opening.toSpaceId);
  const facts: ImpliedFact[] = [];
  const differs: PlanKey[] = [];
  const say: Say = (fact, differing) => {
    facts.push(fact);
    if (differing) differs.push(differing);
  };
  if (at !== undefined) {
    const room = { drawn, project, opening, at };
    onlyDoor(room, differs);
    spaceLoads(room, differs);
    load(room, say);
    group(room, say);
    highHazardLeaves(room, differs);
    area(room, say);
    noOtherDoor(room, differs);
  }
  lobbyExit(drawn, opening, say);
  if (facts.length === 0 && differs.length === 0) return nothing;
  const signature = [...facts.map(({ key, value, from }) => `${key}=${value} ${from}`), ...differs].join('|');
  return { facts, differs, signature };
}

type Say = (fact: ImpliedFact, differing?: PlanKey | false) => void;
interface At {
  readonly drawn: Drawn;
  readonly project: Project;
  readonly opening: Opening;
  /** Index of the space people leave from. */
  readonly at: number;
}

const spaceAt = ({ drawn, at }: At): Space | undefined => drawn.ways.spaces[at];

/** Other doors by which people leave the same space. */
function otherDoors({ drawn, opening, at }: At): number {
  return new Set(
    (drawn.ways.leaving[at] ?? []).map((step) => step.opening.id).filter((id) => id !== opening.id),
  ).size;
}

const isCounted = ({ drawn, opening, at }: At) =>
  (drawn.ways.leaving[at] ?? []).some((step) => step.opening.id === opening.id);

/**
 * The one door of a room is its main door where a rule spares main doors. Where a rule lets a main door have more, as a
 * key lock at the entrance of a shop, an office is no entrance for having one door: there the survey is asked.
 */
function onlyDoor(room: At, differs: PlanKey[]): void {
  const space = spaceAt(room);
  if (!space || !rooms.includes(space.kind) || !isCounted(room) || otherDoors(room) > 0) return;
  if (peopleIn(space, room.project.basis) === 0) return;
  differs.push('planOnlyDoor');
}

/** The load of a room as somebody gave it is not what its use and area come to. */
function spaceLoads(room: At, differs: PlanKey[]): void {
  const space = spaceAt(room);
  if (!space || space.occupantLoad === null || !rooms.includes(space.kind)) return;
  if (loadsDiffer(loadOf(space, room.project.basis))) differs.push('planSpaceLoads');
}

/** The larger load governs; one that nobody gave is taken over where only the people of this room leave. */
function load(room: At, say: Say): void {
  const { drawn, project, opening, at } = room;
  const space = spaceAt(room);
  const served = drawn.served[at];
  if (!space || !served || served.people === 0) return;
  const ofBuilding = project.building.occupantLoad;
  const typed =
    surveyedValue(opening, 'occupantLoad') ??
    (ofBuilding === undefined || ofBuilding.is === 'unknown' ? undefined : ofBuilding.value);
  const isRoom = rooms.includes(space.kind);
  const from = `the load of ${served.names.join(', ')}`;
  if (typed === undefined) {
    // Asked and not answered stays a question at what others share, and low is the unsafe side.
    if (!isRoom || sharedRoles.includes(surveyedValue(opening, 'egressRole'))) return;
    say({ key: 'occupantLoad', value: served.people, from });
  } else if (typed < served.people && (isRoom || otherDoors(room) === 0)) {
    const larger = `${from}, ${counted(served.people, 'person', 'people')}; the survey says ${typed}`;
    say({ key: 'occupantLoad', value: served.people, from: larger }, 'planLoadLarger');
  }
}

/** From the group whose doors are held to most, down; a room is judged by the first that is named for it. */
const strictest: readonly Group[] = [
  'H-1',
  'H-2',
  'H-3',
  'H-4',
  'H-5',
  'I-3',
  'I-2',
  'I-1.2',
  'I-1.1',
  'I-4',
  'A-1',
  'A-2',
  'A-3',
  'A-4',
  'A-5',
  'E',
];

const crowds: readonly Group[] = ['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'E'];

/** Uses that are assembly from 50 people on (IBC 303.1.1 and 303.1.2, from memory). */
const assemblyUses: readonly (Use | null)[] = [
  'assemblyChairs',
  'assemblyTables',
  'assemblyStanding',
  'gaming',
  'exercise',
  'gallery',
];
const assemblyFrom = 50;

interface NamedGroup {
  readonly group: Group;
  /** Where it comes from, after "from the plan: ". */
  readonly from: string;
}

/** What a space is by its other doors, or by its use and load. */
function groupOfSpace({ drawn, project }: At, at: number): NamedGroup | undefined {
  const space = drawn.ways.spaces[at];
  if (!space || !rooms.includes(space.kind)) return undefined;
  const named = strictest.find((one) => drawn.groups[at]?.has(one));
  if (named !== undefined) {
    const marks = (drawn.groups[at]?.get(named) ?? []).join(', ');
    return { group: named, from: `Group ${named} of ${space.name}, named at ${marks}` };
  }
  const people = peopleIn(space, project.basis) ?? 0;
  return assemblyUses.includes(space.use) && people >= assemblyFrom
    ? { group: 'A-3', from: `Group A of ${space.name}, an assembly use for ${people} people` }
    : undefined;
}

/**
 * A crowd or a school that can leave only through here takes its group along: what is asked of its doors is asked of each
 * door on its way. Fewer than make a crowd ask nothing of the next door.
 */
function groupsPassing(room: At): readonly NamedGroup[] {
  return namedBehind(room).flatMap(({ named, people }) =>
    crowds.includes(named.group) && people >= assemblyFrom
      ? [{ ...named, from: `${named.from}, whose people leave through here` }]
      : [],
  );
}

/** Groups of the spaces whose people can leave only through this one. */
function namedBehind(room: At): readonly { readonly named: NamedGroup; readonly people: number }[] {
  const { drawn, project, at } = room;
  const space = spaceAt(room);
  if (!space || (!rooms.includes(space.kind) && otherDoors(room) > 0)) return [];
  return (drawn.served[at]?.behind ?? []).flatMap((behind) => {
    const there = drawn.ways.spaces[behind];
    const named = groupOfSpace(room, behind);
    return there && named ? [{ named, people: peopleIn(there, project.basis) ?? 0 }] : [];
  });
}

/**
 * High hazard does not take its group along, whatever the load: that the next room were hazardous would be said of more
 * than its door. That the people of a hazardous room leave by this door is said, and a reviewer judges it.
 */
function highHazardLeaves(room: At, differs: PlanKey[]): void {
  if (!isCounted(room)) return;
  const behind = namedBehind(room).some(({ named }) => named.group.startsWith('H-'));
  if (behind) differs.push('planHighHazardLeaves');
}

/** The group of the space governs, or that of people who can leave only through it, where it asks for more. */
function group(room: At, say: Say): void {
  const { project, opening, at } = room;
  const ofBuilding = project.building.occupancyGroup;
  const typed =
    surveyedValue(opening, 'occupancyGroup') ??
    (ofBuilding === undefined || ofBuilding.is === 'unknown' ? undefined : ofBuilding.value);
  const own = groupOfSpace(room, at);
  const found = [...(own ? [own] : []), ...groupsPassing(room)];
  const named = strictest.flatMap((one) => found.find((each) => each.group === one) ?? [])[0];
  if (!named || named.group === typed) return;
  const asksMore =
    typed === undefined ||
    !strictest.includes(typed) ||
    strictest.indexOf(named.group) < strictest.indexOf(typed);
  if (!asksMore) return;
  say(
    { key: 'occupancyGroup', value: named.group, from: named.from },
    typed !== undefined && 'planGroupStricter',
  );
}

/** Two areas of one room: the larger is the one that asks for more. */
function area(room: At, say: Say): void {
  const space = spaceAt(room);
  const typed = surveyedValue(room.opening, 'roomAreaFt2');
  if (!space || space.areaFt2 === null || !rooms.includes(space.kind)) return;
  if (typed === undefined) {
    say({ key: 'roomAreaFt2', value: space.areaFt2, from: `the area of ${space.name}` });
    return;
  }
  // A tenth apart is one measuring gross and the other net.
  if (Math.abs(typed - space.areaFt2) <= Math.max(typed, space.areaFt2) / 10) return;
  say(
    {
      key: 'roomAreaFt2',
      value: Math.max(typed, space.areaFt2),
      from: `the larger of ${typed} ft² at the opening and ${space.areaFt2} ft² of ${space.name}`,
    },
    'planAreaDiffers',
  );
}

/** A door that is not counted (for vehicles, sealed off, said to serve nobody), before a room that has no other. */
function noOtherDoor(room: At, differs: PlanKey[]): void {
  if (isWayOut(room.opening) || otherDoors(room) > 0) return;
  if ((room.drawn.served[room.at]?.people ?? 0) > 0) differs.push('planNoOtherDoor');
}

/** Roles under which a lobby on the secure side would not be asked for its way out. */
const plainRoles: readonly (FactValue<'egressRole'> | undefined)[] = [undefined, 'exitAccess', 'convenience'];

/**
 * Whether a lobby has another way to an exit is read from the plan where it shows that there is none. Where its people
 * stand on the locked side of this door, it is a door of their lobby, whatever part was entered for it.
 */
function lobbyExit({ ways }: Drawn, opening: Opening, say: Say): void {
  const role = surveyedValue(opening, 'egressRole');
  const at = (id: string | null) => (id === null ? undefined : ways.indexOf.get(id));
  const isLobby = (index: number | undefined) =>
    index !== undefined && ['lobby', 'elevator'].includes(ways.spaces[index]?.kind ?? '');
  const [inside, secure] = [at(opening.toSpaceId), at(opening.fromSpaceId)];
  let lobby: number | undefined;
  if (role === 'elevatorLobby') lobby = [inside, secure].find(isLobby) ?? inside ?? secure;
  else if (plainRoles.includes(role) && inside !== undefined && isLobby(secure)) lobby = secure;
  if (lobby === undefined || hasOtherExit(ways, lobby, opening)) return;
  const name = ways.spaces[lobby]?.name ?? '';
  const from = `no other way leads from ${name} to an exit`;
  if (role !== 'elevatorLobby') say({ key: 'egressRole', value: 'elevatorLobby', from });
  say(
    { key: 'lobbyHasOtherExit', value: false, from },
    (role !== undefined && role !== 'elevatorLobby') || surveyedValue(opening, 'lobbyHasOtherExit') === true
      ? 'planNoLobbyExit'
      : false,
  );
}
