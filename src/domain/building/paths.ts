import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import type { Release } from '../devices/candidates.ts';
import { endsTheWay, type Opening, type Project } from '../model/project.ts';
import type { Grade } from '../rules/rule.ts';
import { type LobbyWay, lobbyFindings } from './lobbies.ts';

/**
 * Rules that need more than one opening: they look along the way out, not at a door alone. They are findings about
 * the building, so that a door's own decision never depends on its neighbors.
 */
export interface PathFinding {
  readonly ruleId: string;
  readonly grade: Grade;
  readonly sentence: string;
  /** Openings it is about, in the order a person meets them. */
  readonly openingIds: readonly string[];
}

interface Way extends LobbyWay {
  readonly release: Release | undefined;
}

/** Findings along the ways out; openings that join nothing are left to the check of missing places. */
export function pathFindings(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
): readonly PathFinding[] {
  const ways = waysOut(project, decisions);
  const from = new Map<string, Way[]>();
  for (const way of ways) {
    const there = from.get(way.from);
    if (there) there.push(way);
    else from.set(way.from, [way]);
  }
  const net: Net = { project, from };
  return [
    ...repeated(net, ways, 'delayed', secondDelayed),
    ...repeated(net, ways, 'controlled', secondControlled),
    ...mixedOnPath(net, ways),
    ...lobbyFindings(project, ways),
    ...stairs(project, decisions),
  ];
}

interface Net {
  readonly project: Project;
  readonly from: ReadonlyMap<string, readonly Way[]>;
}

function waysOut(project: Project, decisions: ReadonlyMap<string, Decision>): readonly Way[] {
  return Object.values(project.openings).flatMap((opening): Way[] => {
    const { fromSpaceId: secure, toSpaceId: egress } = opening;
    if (secure === null || egress === null || secure === egress) return [];
    const decision = decisions.get(opening.id);
    const release = decision?.chosen?.candidate.release;
    const out: Way = { opening, from: egress, to: secure, release, decision, against: false };
    const both = decision !== undefined && valueIn(decision.slots, 'exitDirection') === 'both';
    return both ? [out, { ...out, from: secure, to: egress, against: true }] : [out];
  });
}

function isOutside(project: Project, spaceId: string): boolean {
  const space = project.spaces[spaceId];
  return space !== undefined && endsTheWay(space);
}

/** Spaces a person reaches from here on the way out, not passing openings that `shut` names. */
function reach(
  net: Net,
  start: string,
  shut: (way: Way) => boolean,
  end: (space: string) => boolean,
): Set<string> {
  const seen = new Set([start]);
  const queue = [start];
  for (let space = queue.shift(); space !== undefined; space = queue.shift()) {
    if (end(space)) continue;
    for (const way of net.from.get(space) ?? []) {
      if (shut(way) || seen.has(way.to)) continue;
      seen.add(way.to);
      queue.push(way.to);
    }
  }
  return seen;
}

type Second = (project: Project, first: Way, second: Way, only: boolean) => PathFinding | undefined;

/** Two holding doors of one kind, one behind the other on the way out. */
function repeated(net: Net, ways: readonly Way[], release: Release, judge: Second): readonly PathFinding[] {
  const holding = ways.filter((way) => way.release === release);
  const outside = (space: string) => isOutside(net.project, space);
  // A controlled door is counted only up to the exit, and an exit stair is one.
  const end = (space: string) =>
    outside(space) || (release === 'controlled' && net.project.spaces[space]?.kind === 'stair');
  const found = new Map<string, PathFinding>();
  for (const first of holding) {
    const behind = reach(net, first.to, (way) => way.opening === first.opening, end);
    const without = reach(net, first.to, (way) => way.release === release, end);
    const freeWayOn = [...without].some(end);
    for (const second of holding) {
      if (second.opening === first.opening || !behind.has(second.from)) continue;
      const finding = judge(net.project, first, second, !freeWayOn);
      const key = [first.opening.id, second.opening.id].toSorted().join(' ');
      if (finding && !found.has(key)) found.set(key, finding);
    }
  }
  return [...found.values()];
}

function secondDelayed(project: Project, first: Way, second: Way, only: boolean): PathFinding {
  const marks = `${first.opening.mark} and ${second.opening.mark}`;
  const counted = project.basis.ibc !== null;
  return {
    ruleId: counted ? 'R-68' : 'R-87',
    grade: counted && only ? 'must' : 'should',
    sentence: only
      ? `Whoever leaves through ${first.opening.mark} is delayed again at ${second.opening.mark} and has no other way: ${counted ? 'the IBC allows one delayed door on a path, with few exceptions' : 'read the occupancy chapter'}.`
      : `Delayed doors ${marks} are in series; there is another path, so a reviewer decides whether they count as one path.`,
    openingIds: [first.opening.id, second.opening.id],
  };
}

function secondControlled(_project: Project, first: Way, second: Way): PathFinding {
  return {
    ruleId: 'R-93',
    grade: 'must',
    sentence: `Controlled doors ${first.opening.mark} and ${second.opening.mark} are in series before an exit; one is allowed unless the treatment area is excepted.`,
    openingIds: [first.opening.id, second.opening.id],
  };
}

/** A delayed door and a controlled or clinical one on one path: no text settles it. */
function mixedOnPath(net: Net, ways: readonly Way[]): readonly PathFinding[] {
  const kept = (way: Way) => way.release === 'controlled' || way.release === 'clinical';
  const end = (space: string) => isOutside(net.project, space);
  const found = new Map<string, PathFinding>();
  for (const first of ways.filter((way) => kept(way) || way.release === 'delayed')) {
    const behind = reach(net, first.to, (way) => way.opening === first.opening, end);
    for (const second of ways) {
      const mixed = kept(first) ? second.release === 'delayed' : kept(second);
      if (!mixed || second.opening === first.opening || !behind.has(second.from)) continue;
      found.set([first.opening.id, second.opening.id].toSorted().join(' '), {
        ruleId: 'R-125',
        grade: 'must',
        sentence: `${first.opening.mark} and ${second.opening.mark} combine a delayed and a staff-released door in one egress path; no text forbids or allows that, so a reviewer decides.`,
        openingIds: [first.opening.id, second.opening.id],
      });
    }
  }
  return [...found.values()];
}

/** Stair doors belong together: one release for all that are locked, and re-entry floors close enough. */
function stairs(project: Project, decisions: ReadonlyMap<string, Decision>): readonly PathFinding[] {
  // By stair once: looking through all openings for each stair takes the square of the building.
  const around = new Map<string, Opening[]>();
  for (const opening of Object.values(project.openings)) {
    for (const id of new Set([opening.fromSpaceId, opening.toSpaceId])) {
      if (id === null || project.spaces[id]?.kind !== 'stair') continue;
      const there = around.get(id);
      if (there) there.push(opening);
      else around.set(id, [opening]);
    }
  }
  return Object.values(project.spaces).flatMap((stair): PathFinding[] => {
    if (stair.kind !== 'stair') return [];
    const doors = around.get(stair.id) ?? [];
    const entries = doors.flatMap((opening) => {
      const decision = decisions.get(opening.id);
      if (!decision || valueIn(decision.slots, 'egressRole') !== 'stairEntry') return [];
      const wanted = valueIn(decision.slots, 'stairLockWanted');
      return [{ opening, decision, locked: wanted === 'stairSide' || wanted === 'both' }];
    });
    return [...releasedTogether(stair.name, entries), ...reentryFloors(project, stair.name, entries)];
  });
}

interface StairEntry {
  readonly opening: Opening;
  readonly decision: Decision;
  readonly locked: boolean;
}

function releasedTogether(stair: string, entries: readonly StairEntry[]): readonly PathFinding[] {
  const locked = entries.filter((one) => one.locked);
  const points = new Set(locked.map((one) => valueIn(one.decision.slots, 'stairReleasePoint')));
  if (locked.length < 2 || (points.size === 1 && !points.has(undefined) && !points.has('none'))) return [];
  return [
    {
      ruleId: 'R-55',
      grade: 'must',
      sentence: `${stair}: its ${locked.length} locked doors must be released together from one place, and the survey does not name the same place for all of them.`,
      openingIds: locked.map((one) => one.opening.id),
    },
  ];
}

/** Greatest number of stories between floors of re-entry under selected re-entry (NFPA 101 7.2.1.5.8, second-hand). */
const mostStoriesBetween = 4;

function reentryFloors(
  project: Project,
  stair: string,
  entries: readonly StairEntry[],
): readonly PathFinding[] {
  const selected = entries.filter((one) => valueIn(one.decision.slots, 'selectedReentry') === true);
  if (selected.length === 0 || project.basis.nfpa101 === null) return [];
  const levels = (list: readonly StairEntry[]) =>
    list
      .flatMap((one) =>
        one.opening.floorId === null ? [] : [project.floors[one.opening.floorId]?.level ?? []].flat(),
      )
      .toSorted((a, b) => a - b);
  const all = levels(entries);
  const open = levels(
    entries.filter((one) => !one.locked || one.decision.chosen?.candidate.release === 'stairReentry'),
  );
  const unlocked = levels(entries.filter((one) => !one.locked));
  const floors = unlocked.length > 0 ? unlocked : open;
  const problems: string[] = [];
  if (floors.length < 2) problems.push('fewer than two floors allow re-entry');
  // Stories between two floors are those one passes: floors 1 and 6 have four between them.
  const gaps = floors.slice(1).map((level, index) => level - (floors[index] ?? level) - 1);
  if (gaps.some((gap) => gap > mostStoriesBetween)) {
    problems.push(`more than ${mostStoriesBetween} stories lie between two floors of re-entry`);
  }
  const top = all.at(-1);
  const highest = floors.at(-1);
  if (top !== undefined && highest !== undefined && top - highest > 1) {
    problems.push('neither the top nor the next-to-top floor allows re-entry');
  }
  return problems.length === 0
    ? []
    : [
        {
          ruleId: 'R-129',
          grade: 'must',
          sentence: `${stair}: selected re-entry is planned, but ${problems.join(', and ')}.`,
          openingIds: selected.map((one) => one.opening.id),
        },
      ];
}
