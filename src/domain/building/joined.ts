import { decideAll } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import type { Project } from '../model/project.ts';
import { allFindings, withBuilding } from './alongTheWay.ts';
import { assessBuilding, type BuildingAnswer } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import { type PathFinding, pathFindings } from './paths.ts';
import { type SpaceEgress, spaceEgress } from './spaceEgress.ts';

/** A building that was walked: what was found, and each decision as the building leaves it. */
export interface Judged {
  readonly answer: BuildingAnswer;
  readonly paths: readonly PathFinding[];
  readonly spaces: readonly SpaceEgress[];
  readonly findings: readonly BuildingFinding[];
  /** What screens, paper, tables and other programs are told of each opening. */
  readonly decisions: ReadonlyMap<string, Decision>;
}

/** Every opening decided by itself, then the building walked with what was decided. */
export function judgeBuilding(
  project: Project,
  alone: ReadonlyMap<string, Decision> = decideAll(project),
): Judged {
  const answer = assessBuilding(project, alone);
  const paths = pathFindings(project, alone);
  const spaces = spaceEgress(answer);
  const findings = allFindings(answer, paths, spaces);
  return { answer, paths, spaces, findings, decisions: withBuilding(alone, findings) };
}

/** Decisions as the building leaves them. */
export function decideInBuilding(project: Project): ReadonlyMap<string, Decision> {
  return judgeBuilding(project).decisions;
}
