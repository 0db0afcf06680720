import { withBuilding } from '../domain/building/alongTheWay.ts';
import { spacesAround } from '../domain/building/aroundOpening.ts';
import { type Judged, judgeBuilding } from '../domain/building/joined.ts';
import type { PathFinding } from '../domain/building/paths.ts';
import { decideAll } from '../domain/decide/decide.ts';
import type { Decision } from '../domain/decide/decision.ts';
import type { Opening, Project } from '../domain/model/project.ts';
import { allAlone, decisionAlone } from './decisionsAlone.ts';
import { sameBuilding } from './derive.ts';

let walked: { readonly project: Project; readonly judged: Judged } | undefined;

/** The building as it was walked, if nothing that the walk reads was changed since. */
function walkedAs(project: Project): Judged | undefined {
  return walked && sameBuilding(walked.project, project) ? walked.judged : undefined;
}

/** The building as a whole; walked again after an edit that the walk reads, well under a second. */
function judgedFor(project: Project): Judged {
  const before = walkedAs(project);
  if (before) return before;
  const judged = judgeBuilding(project, allAlone(project));
  walked = { project, judged };
  return judged;
}

export const isWalked = (project: Project): boolean => walkedAs(project) !== undefined;

export const buildingFor = (project: Project) => judgedFor(project).answer;

/** Rules that look along the way out. */
export const pathFindingsFor = (project: Project) => judgedFor(project).paths;

/** Loads, ways out and their width, space by space. */
export const spaceEgressFor = (project: Project) => judgedFor(project).spaces;

/** The same for the spaces one opening joins, without walking the whole building. */
export const spacesAroundFor = (project: Project, opening: Opening) =>
  spacesAround(project, opening, (one) => decisionAlone(project, one));

/** What was found about the building, loads and exits and rules along the way out among it. */
export const buildingFindingsFor = (project: Project) => judgedFor(project).findings;

/** All decisions as the building leaves them: what paper, tables and the reviewer are told, walked for where needed. */
export const decisionsInBuilding = (project: Project) => judgedFor(project).decisions;

/** The same for a project that is not the one being edited, such as an issued edition; nothing is remembered. */
export const decisionsOfEdition = (project: Project) => judgeBuilding(project, decideAll(project)).decisions;

/**
 * Each opening as decided now, under what the building was last found to do to it. Not the last word: what was changed
 * since may shut somebody in elsewhere.
 */
export function decisionsUntilWalked(project: Project): ReadonlyMap<string, Decision> {
  const alone = allAlone(project);
  return walked?.project.id === project.id ? withBuilding(alone, walked.judged.findings) : alone;
}

/** The rules along the way out as last found in this project; as above. */
export function pathFindingsUntilWalked(project: Project): readonly PathFinding[] {
  return walked?.project.id === project.id ? walked.judged.paths : [];
}

/** Decides one opening ahead of a walk, so that a large building can be decided piece by piece. */
export function decideAhead(project: Project, opening: Opening): void {
  decisionAlone(project, opening);
}
