import type { Decision } from '../decide/decision.ts';
import { standsAt } from '../decide/whatStands.ts';
import { endsTheWay, type Opening, type Project } from '../model/project.ts';
import { AFTER, exitThrough, type Grade, NOT_SAID, STAFF } from './passage.ts';
import type { PathFinding } from './paths.ts';

/** One opening in one direction in which people are said to leave. */
export interface LobbyWay {
  readonly opening: Opening;
  readonly from: string;
  readonly to: string;
  readonly decision: Decision | undefined;
  /** Against the direction of the lock: from where the credential is shown. */
  readonly against: boolean;
}

/** A lobby, of an elevator or not, out of which no unlocked way leads to a stair or outside. */
export function lobbyFindings(project: Project, ways: readonly LobbyWay[]): readonly PathFinding[] {
  const from = new Map<string, LobbyWay[]>();
  for (const way of ways) from.set(way.from, [...(from.get(way.from) ?? []), way]);
  const grades = new Map<LobbyWay, Grade>();
  const gradeOf = (way: LobbyWay) => {
    const known = grades.get(way) ?? exitGrade(project, way);
    grades.set(way, known);
    return known;
  };
  /** Whether somebody in the lobby comes to an exit by ways that are passed this well. */
  const leaves = (start: string, passes: (grade: Grade, way: LobbyWay) => boolean) => {
    const seen = new Set([start]);
    const queue = [start];
    for (let at = queue.shift(); at !== undefined; at = queue.shift()) {
      const here = project.spaces[at];
      if (here && (endsTheWay(here) || here.kind === 'stair')) return true;
      for (const way of from.get(at) ?? []) {
        if (seen.has(way.to) || !passes(gradeOf(way), way)) continue;
        seen.add(way.to);
        queue.push(way.to);
      }
    }
    return false;
  };
  return Object.values(project.spaces).flatMap((space): PathFinding[] => {
    if (space.kind !== 'elevator' && space.kind !== 'lobby') return [];
    if (!ways.some((way) => way.from === space.id || way.to === space.id)) return [];
    if (leaves(space.id, (grade, way) => grade <= AFTER || isLobbyLock(grade, way))) return [];
    const out = from.get(space.id) ?? [];
    const kind = space.kind === 'elevator' ? 'elevator lobby' : 'lobby';
    const undecided = out.filter((way) => gradeOf(way) === NOT_SAID);
    if (leaves(space.id, (grade, way) => grade <= NOT_SAID || isLobbyLock(grade, way))) {
      return [
        {
          ruleId: 'R-94',
          grade: 'should',
          sentence: `${space.name}: whether a way leads from this ${kind} to an exit hangs on doors where nothing is decided.`,
          openingIds: idsOf(undecided),
        },
      ];
    }
    // A door by which people come into the lobby is no way out of it, and nothing is wrong with its lock.
    const about = out.length > 0 ? out : ways.filter((way) => way.to === space.id);
    return [
      {
        ruleId: 'R-94',
        grade: 'must',
        sentence: `${space.name}: no way leads from this ${kind} to an exit that does not pass a locked door.`,
        openingIds: idsOf(about),
      },
    ];
  });
}

const idsOf = (ways: readonly LobbyWay[]) => [...new Set(ways.map((way) => way.opening.id))];

function exitGrade(project: Project, { opening, decision, against }: LobbyWay): Grade {
  const simulated = decision && standsAt(project, opening, decision);
  return exitThrough({ decision, simulated, bothWays: against }, 'lockedHours', against);
}

/** The lock that people in the lobby are let out of by alarm and by whoever they call, where the rules let it stand. */
function isLobbyLock(grade: Grade, { decision }: LobbyWay): boolean {
  const chosen = decision?.chosen?.candidate;
  return (
    grade === STAFF &&
    chosen?.release === 'lobby' &&
    decision?.rejected.every((one) => one.candidate !== chosen) === true
  );
}
